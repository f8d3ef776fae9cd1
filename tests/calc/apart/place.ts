import type { Apart, Draw } from './apart.ts';
import {
  aboutLength,
  add,
  atHeight,
  deg,
  dot,
  face,
  least,
  normal,
  rad,
  shaftDirection,
  times,
  turned,
  unit,
  type V,
} from './geometry.ts';

type Rows = readonly (readonly number[])[];

const profile = (it: Draw): Rows => {
  let [z, x] = [it.between(-100, 50), it.between(-50, 50)];
  return it.many(it.whole(2, 6), () => {
    z += it.between(60, 300);
    x += it.between(-60, 60);
    return [z, x];
  });
};
const maybeProfile = (it: Draw): Rows => (it.share() < 0.5 ? [] : profile(it));
const radius = (it: Draw): number => (it.share() < 0.3 ? 0 : it.between(700, 4000));
const lean = (it: Draw): number => it.between(-15, 15);
const sizeOf = (it: Draw): number => it.between(30, 300);

const rudders = (it: Draw): number[] => {
  const mainFoot = it.between(-1500, -600);
  const vaneFoot = it.between(-1500, -600);
  return [
    vaneFoot + it.between(200, 1400),
    vaneFoot,
    mainFoot + it.between(200, 1400),
    mainFoot,
    it.between(-200, 200),
    it.between(-200, 200),
    it.between(250, 700),
    it.between(150, 600),
    it.between(100, 500),
    lean(it),
    it.between(-200, 200),
    lean(it),
  ];
};

/** Both rudders at a height: how far apart their axes are in plan, and how far aft the boat's own reaches. */
function at(z: number, given: readonly number[]) {
  const [
    ,
    ,
    head = 0,
    foot = 0,
    overhang = 0,
    overhangFoot = 0,
    ahead = 0,
    shaftX = 0,
    low = 0,
    aft = 0,
    offset = 0,
    side = 0,
  ] = given;
  const share = (z - foot) / (head - foot);
  const edge = overhangFoot + share * (overhang - overhangFoot);
  const [x, y] = atHeight([shaftX, offset, low], shaftDirection(aft, side), z);
  return { x, y, edge, reach: edge + ahead, apart: Math.hypot(x + ahead, y) };
}

function shared(given: readonly number[]): readonly [number, number] | null {
  const [vaneHead = 0, vaneFoot = 0, mainHead = 0, mainFoot = 0] = given;
  const heights = [Math.max(vaneFoot, mainFoot), Math.min(vaneHead, mainHead)] as const;
  return heights[0] <= heights[1] ? heights : null;
}

const wedge = (edge: number, height: number, aft: number, slope: number, side: number) => {
  const up = height * shaftDirection(aft, side)[2];
  const between = (z: number): number => z * (Math.tan(rad(slope)) - Math.tan(rad(aft)));
  const [a, b] = [between(-up / 2), between(up / 2)];
  const thin = Math.min(a, b);
  return { middle: edge + between(0) - thin, thick: edge + Math.max(a, b) - thin };
};
type W = [edge: number, height: number, aft: number, slope: number, side: number];
const wedgeGiven = (it: Draw) => [
  it.share() < 0.2,
  it.between(2, 9),
  it.between(80, 220),
  lean(it),
  it.between(-40, 40),
  lean(it),
];

export const place: readonly Apart[] = [
  {
    id: 'EDGE_DISTANCE',
    road: 'each corner of the flange to each border',
    draw: (it) => [
      it.between(-400, 400),
      it.between(100, 800),
      sizeOf(it),
      sizeOf(it),
      it.between(-50, 90),
      it.between(700, 990),
      it.between(300, 600),
    ],
    answer: (y, z, h, w, bottom, top, half) => {
      const corners = [-1, 1].flatMap((a) => [-1, 1].map((b) => [y + (a * w) / 2, z + (b * h) / 2] as const));
      return Math.min(...corners.flatMap(([cy, cz]) => [cz - bottom, top - cz, half - cy, half + cy]));
    },
  },
  {
    id: 'FLANGES_APART',
    road: 'the nearest of 21 × 21 points of one rectangle to the other; overlaps by the move that parts them',
    draw: (it) => [
      it.between(-300, 300),
      it.between(100, 500),
      sizeOf(it),
      sizeOf(it),
      it.between(-300, 300),
      it.between(100, 500),
      sizeOf(it),
      sizeOf(it),
    ],
    answer: (y1, z1, h1, w1, y2, z2, h2, w2) => {
      const moves = [
        y2 - w2 / 2 - (y1 + w1 / 2),
        y1 - w1 / 2 - (y2 + w2 / 2),
        z2 - h2 / 2 - (z1 + h1 / 2),
        z1 - h1 / 2 - (z2 + h2 / 2),
      ];
      if (Math.max(...moves) <= 0) return Math.max(...moves);
      const held = (v: number, low: number, high: number): number => Math.min(high, Math.max(low, v));
      // The nearest points of two such rectangles: one's centre held in the other, and back.
      let [py, pz] = [y1, z1];
      for (let i = 0; i < 4; i++) {
        const [qy, qz] = [held(py, y2 - w2 / 2, y2 + w2 / 2), held(pz, z2 - h2 / 2, z2 + h2 / 2)];
        [py, pz] = [held(qy, y1 - w1 / 2, y1 + w1 / 2), held(qz, z1 - h1 / 2, z1 + h1 / 2)];
        if (i === 3) return Math.hypot(py - qy, pz - qz);
      }
      return null;
    },
  },
  {
    id: 'TRANSOM_FACE_SLOPE',
    road: 'two places of the face a little apart',
    draw: (it) => [it.between(-200, 1200), it.between(-40, 40), maybeProfile(it)],
    answer: (z, rake, rows: Rows) => {
      const step = 1e-4;
      // Upward, so that a height on a bend has the slope above it.
      return deg(Math.atan2(face(0, z + step, rake, 0, rows) - face(0, z, rake, 0, rows), step));
    },
    within: 1e-6,
  },
  {
    id: 'TRANSOM_FACE_X',
    road: 'the angle on the arc, and shares of the two rows about a height',
    draw: (it) => [
      it.between(-600, 600),
      it.between(-200, 1200),
      it.between(-40, 40),
      radius(it),
      maybeProfile(it),
    ],
    answer: face,
  },
  {
    id: 'FLANGE_YAW',
    road: 'the direction of the face’s normal',
    draw: (it) => [it.between(-600, 600), radius(it)],
    answer: (y, r) => {
      const n = normal(y, 40, 12, r);
      return deg(Math.abs(Math.atan2(n[1], n[0])));
    },
    within: 1e-6,
  },
  {
    id: 'LOCAL_CAMBER_RADIUS',
    road: 'the circle through three places of the face near the foot, seen square to it along the level',
    draw: (it) => [
      it.between(-500, 500),
      it.between(0, 900),
      it.between(-50, 50),
      radius(it),
      maybeProfile(it),
    ],
    answer: (y, z, rake, r, rows: Rows) => {
      if (r === 0) return 0;
      // The level curve x(y) bends by k; a section that leans by the angle of the normal bends by k times its cosine.
      const n = normal(y, z, rake, r, rows);
      const level = Math.hypot(n[0], n[1]);
      const step = 0.5;
      const [a, b, c] = [-1, 0, 1].map(
        (i) => [face(y + i * step, z, rake, r, rows), y + i * step] as const,
      ) as [V2, V2, V2];
      return throughThree(a, b, c) / level;
    },
    within: 1e-5,
  },
  {
    id: 'ALONG_SHAFT',
    road: 'the shaft as the line in which two leaning planes cut',
    draw: (it) => [it.between(-500, 500), it.between(-500, 900), lean(it), it.share() < 0.3 ? 0 : lean(it)],
    answer: (from, to, aft, side) => {
      const along = shaftDirection(aft, side);
      const [a, b] = [atHeight([3, 4, 5], along, from), atHeight([3, 4, 5], along, to)];
      return Math.sign(to - from) * Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
    },
  },
  {
    id: 'UPRIGHT',
    road: 'the shaft as the line in which two leaning planes cut',
    draw: (it) => [it.between(50, 1500), lean(it), it.share() < 0.3 ? 0 : lean(it)],
    answer: (length, aft, side) => add([7, 8, 9], times(shaftDirection(aft, side), length))[2] - 9,
  },
  {
    id: 'AXIS_X',
    road: 'a line through a point',
    draw: (it) => [it.between(-900, 1100), it.between(100, 500), it.between(100, 500), lean(it)],
    answer: (z, x, low, aft) => atHeight([x, 3, low], shaftDirection(aft, 2), z)[0],
  },
  {
    id: 'FACE_GAP',
    road: 'looking at every height',
    draw: (it) => {
      const from = it.between(-100, 400);
      const to = from + it.between(-40, 700);
      const place = [it.between(20, 90), from, to, it.between(-200, 200), it.between(100, 400)];
      const [low, aft] = [it.between(150, 400), lean(it)];
      // Where the face runs nearly along the shaft, the nearest height lies between the ends.
      if (it.share() < 0.6) {
        const along = (z: number): number[] => [z, z * Math.tan(rad(aft)) + it.between(-4, 4)];
        const rows = it.share() < 0.5 ? [] : it.many(4, (i) => along(-60 + i * it.between(180, 260)));
        return [
          ...place,
          low,
          aft,
          aft + it.between(-1.5, 1.5),
          it.between(700, 1500),
          rows,
          it.between(8, 15),
        ];
      }
      return [...place, low, aft, it.between(-40, 40), radius(it), maybeProfile(it), lean(it)];
    },
    answer: (forward, from, to, y, x, low, aft, rake, r, rows: Rows, side) => {
      if (from > to) return null;
      const gap = (z: number): number => {
        const p = atHeight([x, y, low], shaftDirection(aft, side), z);
        return p[0] - forward - face(p[1], z, rake, r, rows);
      };
      const bends = rows.map(([z = 0]) => z).filter((z) => z > from && z < to);
      const ends = [from, ...bends, to];
      return Math.min(...ends.slice(1).map((end, i) => least(gap, ends[i] as number, end)));
    },
    within: 1e-7,
    runs: 150,
  },
  {
    id: 'LOWEST_HOLE',
    road: 'both holes turned by the heel either way',
    draw: (it) => [it.between(100, 500), it.between(5, 40), it.between(-200, 200), it.between(60, 200)],
    answer: (z, heel, y, spacing) =>
      Math.min(
        ...[-1, 1].flatMap((way) =>
          [-1, 1].map((side) => turned(aboutLength(way * heel), [0, y + (side * spacing) / 2, z])[2]),
        ),
      ),
  },
  {
    id: 'STANDOFF',
    road: 'a level line to the plane that the shims lift off the face',
    draw: (it) => [it.between(10, 90), it.between(-40, 40), it.between(2, 20), it.between(90, 250)],
    answer: (stack, slope, middle, reach) => {
      const out: V = unit([1, 0, -Math.tan(rad(slope))]);
      return stack / dot(out, [1, 0, 0]) + middle + reach;
    },
  },
  {
    id: 'WEDGE_MIDDLE',
    road: 'the two planes it lies between, at both edges and at the middle',
    draw: wedgeGiven,
    answer: (hinged, ...given: W) => (hinged ? 0 : wedge(...given).middle),
  },
  {
    id: 'WEDGE_THICK_EDGE',
    road: 'the two planes it lies between, at both edges',
    draw: wedgeGiven,
    answer: (hinged, ...given: W) => (hinged ? 0 : wedge(...given).thick),
  },
  {
    id: 'WEDGE_ANGLE',
    road: 'the angle between two directions',
    draw: (it) => [it.share() < 0.2, lean(it), it.between(-40, 40)],
    answer: (hinged, aft, slope) => {
      if (hinged) return 0;
      const [a, b]: [V, V] = [shaftDirection(aft, 0), shaftDirection(slope, 0)];
      return deg(Math.atan2(Math.abs(a[0] * b[2] - a[2] * b[0]), dot(a, b)));
    },
  },
  {
    id: 'RUDDER_GAP',
    road: 'looking at every height',
    draw: (it) => [it.between(20, 90), ...rudders(it)],
    answer: (balance, ...given) => {
      const heights = shared(given);
      return heights && least((z) => at(z, given).x - balance - at(z, given).edge, ...heights, 20);
    },
  },
  {
    id: 'RUDDER_GAP_TURNED',
    road: 'looking at every height',
    draw: (it) => {
      const chord = it.between(150, 300);
      return [chord, it.between(0.1, 0.9) * chord, ...rudders(it)];
    },
    answer: (chord, balance, ...given) => {
      const heights = shared(given);
      if (heights === null) return null;
      return (
        least((z) => at(z, given).apart - at(z, given).reach, ...heights) - Math.max(balance, chord - balance)
      );
    },
    within: 1e-7,
  },
  {
    id: 'RUDDER_GAP_SWUNG',
    road: 'both rudders at 61 angles each, over 25 heights',
    draw: (it) => {
      const chord = it.between(150, 300);
      return [it.between(10, 85), it.between(10, 85), chord, it.between(0.1, 0.9) * chord, ...rudders(it)];
    },
    answer: (mainSwing, vaneSwing, chord, balance, ...given) => {
      const heights = shared(given);
      if (heights === null) return null;
      const [low, high] = heights;
      const looks = Array.from({ length: 25 }, (_, i) => at(low + (i / 24) * (high - low), given));
      if (looks.some((it) => it.reach <= 0)) return null;
      return Math.min(...looks.map((it) => closest(it, given[6], mainSwing, vaneSwing, chord, balance)));
    },
    // Between two of the angles a rim moves so far.
    slack: 9,
    runs: 40,
  },
  {
    id: 'SHAFT_GAP',
    road: 'looking at every height, tube and bare stock apart',
    draw: (it) => {
      const given = rudders(it);
      const [head = 0] = given;
      return [
        it.between(50, 90),
        it.between(20, 45),
        head + it.between(20, 300),
        it.between(-500, 900),
        ...given,
      ];
    },
    answer: (tube, stock, foot, top, ...given) => {
      const [vaneHead, , mainHead, mainFoot] = given;
      const [from, to] = [Math.max(vaneHead, mainFoot), Math.min(mainHead, top)];
      if (from > to) return null;
      const free = (z: number): number => at(z, given).apart - at(z, given).reach;
      const parts = [];
      if (to >= foot) parts.push(least(free, Math.max(from, foot), to) - tube / 2);
      if (from < foot) parts.push(least(free, from, Math.min(to, foot)) - stock / 2);
      return Math.min(...parts);
    },
    within: 1e-7,
  },
  {
    id: 'RUDDER_IMMERSION',
    road: 'counting 100 000 slices',
    draw: (it) => {
      const head = it.between(-100, 900);
      return [head, head - it.between(200, 1000)];
    },
    answer: (head, foot) => {
      const slices = 100_000;
      let under = 0;
      for (let i = 0; i < slices; i++) if (foot + ((i + 0.5) / slices) * (head - foot) < 0) under++;
      return under / slices;
    },
    within: 1e-4,
    runs: 12,
  },
  {
    id: 'SHAFT_BESIDE_RUDDER',
    road: 'whether some height of one lies in the other',
    draw: (it) => [
      it.between(-900, 300),
      it.between(-300, 300),
      it.between(-1500, -200),
      it.between(-800, 900),
    ],
    answer: (vaneHead, mainHead, mainFoot, top) =>
      [vaneHead, mainFoot].some((z) => z >= vaneHead && z <= top && z >= mainFoot && z <= mainHead) ? 1 : 0,
  },
  {
    id: 'RUDDERS_SHARE_HEIGHT',
    road: 'whether an end of one lies in the other',
    draw: (it) => rudders(it).slice(0, 4),
    answer: (a, b, c, d) =>
      [a, b].some((z) => z <= c && z >= d) || [c, d].some((z) => z <= a && z >= b) ? 1 : 0,
  },
  {
    id: 'RUDDER_GAP_VERTICAL',
    road: 'the ends that face each other',
    draw: (it) => {
      const a = it.between(-400, 0);
      const b = a - 200 - (it.share() < 0.3 ? it.between(0.1, 0.9) : it.between(40, 500));
      return it.share() < 0.5 ? [a, a - 200, b, b - 300] : [b, b - 150, a, a - 250];
    },
    answer: (a, b, c, d) => (b > c ? b - c : d > a ? d - a : null),
  },
];

type V2 = readonly [number, number];

/** Distance of two straight pieces in plan; 0 where they cross. */
function between(a: V2, b: V2, c: V2, d: V2): number {
  const side = (p: V2, q: V2, r: V2): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return 0;
  const off = (p: V2, q: V2, r: V2): number => {
    const [x, y] = [q[0] - p[0], q[1] - p[1]];
    const share = Math.min(1, Math.max(0, ((r[0] - p[0]) * x + (r[1] - p[1]) * y) / (x * x + y * y)));
    return Math.sqrt((p[0] + share * x - r[0]) ** 2 + (p[1] + share * y - r[1]) ** 2);
  };
  return Math.min(off(a, b, c), off(a, b, d), off(c, d, a), off(c, d, b));
}

/** Closest approach of the two rudders at a height, the main one's axis at the origin. */
function closest(
  { x, y, reach, apart }: ReturnType<typeof at>,
  ahead: number,
  mainSwing: number,
  vaneSwing: number,
  chord: number,
  balance: number,
): number {
  const axis: V2 = [x + ahead, y];
  const bearing = Math.abs(deg(Math.atan2(axis[1], axis[0])));
  const angles = Array.from({ length: 61 }, (_, i) => i / 30 - 1);
  const swept = (from: V2, heading: number, swing: number, length: number) =>
    angles.map((share): readonly [V2, V2] => {
      const turn = rad(heading + share * swing);
      return [from, [from[0] + length * Math.cos(turn), from[1] + length * Math.sin(turn)]];
    });
  const main = swept([0, 0], 0, mainSwing, reach);
  const to = (part: readonly (readonly [V2, V2])[]): number => {
    let least = Number.POSITIVE_INFINITY;
    for (const [a, b] of main) for (const [c, d] of part) least = Math.min(least, between(a, b, c, d));
    return least;
  };
  const front =
    bearing <= Math.min(mainSwing, vaneSwing)
      ? apart - reach - balance
      : to(swept(axis, 180, vaneSwing, balance));
  return Math.min(front, to(swept(axis, 0, vaneSwing, chord - balance)));
}

/** Radius of the circle through three points: the product of the sides over four times the area. */
function throughThree(a: V2, b: V2, c: V2): number {
  const side = (p: V2, q: V2): number => Math.hypot(p[0] - q[0], p[1] - q[1]);
  const area = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
  return (side(a, b) * side(b, c) * side(c, a)) / (4 * area);
}
