import type { Apart, Draw } from './apart.ts';
import { add, cross, dot, normal, rad, size, solve, sub, times, unit, type V } from './geometry.ts';

/** ISO 261, 4032, 7089, 898-1 and 273, typed from the standards’ tables and not from the library. */
const BOLTS: Readonly<
  Record<number, { pitch: number; nut: number; washer: number; across: number; stress: number; hole: number }>
> = {
  6: { pitch: 1, nut: 5.2, washer: 1.8, across: 12, stress: 20.1, hole: 6.6 },
  8: { pitch: 1.25, nut: 6.8, washer: 1.8, across: 16, stress: 36.6, hole: 9 },
  10: { pitch: 1.5, nut: 8.4, washer: 2.2, across: 20, stress: 58, hole: 11 },
  12: { pitch: 1.75, nut: 10.8, washer: 2.7, across: 24, stress: 84.3, hole: 13.5 },
};
const of = (d: number) => BOLTS[d] as (typeof BOLTS)[number];
const diameter = (it: Draw): number => it.one([6, 8, 10, 12]);

/** ISO 888, unbracketed: by fives to 70, by tens to 160, by twenties to 500, and the short ones. */
const LENGTHS: readonly number[] = [
  ...[6, 8, 10, 12, 16, 20],
  ...Array.from({ length: 10 }, (_, i) => 25 + 5 * i),
  ...Array.from({ length: 9 }, (_, i) => 80 + 10 * i),
  ...Array.from({ length: 17 }, (_, i) => 180 + 20 * i),
];

const bolt = (it: Draw): number[] => [
  diameter(it),
  it.between(400, 800),
  it.between(1.5, 4),
  it.between(2, 70),
];
/** AISC 360 Commentary J3 with EN 1993-1-8 3.6.1(12) on the shear. */
function share(
  [d = 0, strength = 0, safety = 0, packing = 0]: readonly number[],
  tension: number,
  shear: number,
): number {
  const bears = (of(d).stress * strength) / safety;
  const left = packing * 3 <= d ? 1 : Math.min(1, 1 / (8 / 9 + packing / (3 * d)));
  return size([tension / bears, shear / (0.6 * bears * left), 0]);
}

const cases = (it: Draw): number[] => [it.between(0.04, 0.6), it.between(15, 88)];
const casesOf = (drag: number, swing: number) => [
  { side: 1, aft: drag },
  { side: Math.cos(rad(swing)), aft: Math.sin(rad(swing)) },
];

const lower = (it: Draw): number[] => [
  ...[it.between(2000, 9000), it.between(800, 5000), ...cases(it), it.between(15, 350)],
  ...[
    it.between(-500, 500),
    it.between(-90, 90),
    it.between(80, 220),
    it.between(-40, 40),
    it.between(50, 900),
    it.between(90, 220),
  ],
];

/** Pull and shear on one lower bolt for each case: level force on a lever, turned into the face, and what slides. */
function lowerPulls([
  low = 0,
  up = 0,
  drag = 0,
  swing = 0,
  off = 0,
  meet = 0,
  aside = 0,
  apart = 0,
  slope = 0,
  slip = 0,
  height = 0,
]: readonly number[]) {
  const out: V = [Math.cos(rad(slope)), 0, -Math.sin(rad(slope))];
  const along: V = [Math.sin(rad(slope)), 0, Math.cos(rad(slope))];
  return casesOf(drag, swing).map(({ side, aft }) => {
    // About the vertical the lower reaction turns the bracket one way; the upper one, which takes hold where the struts
    // cross, turns the shaft the same way or against it, and counts in full only where that is the worse.
    const [turns, more] = [low * side * off, up * side * meet];
    const moment = Math.max(turns, turns + more, -(turns + more)) + Math.abs(up * aft * aside);
    const level: V = [moment / apart + (low * aft) / 2, 0, 0];
    const tension = dot(level, out) + (slip * off) / height;
    const shear = Math.hypot((low * side) / 2, Math.abs(dot(level, along)) + slip / 2);
    return { tension, shear };
  });
}

interface Foot {
  readonly out: V;
  readonly level: V;
  readonly upward: V;
  readonly count: number;
  readonly across: number;
  readonly up: number;
}
function footOf(
  count: number,
  spacing: number,
  height: number,
  y: number,
  slope: number,
  radius: number,
): Foot {
  const out = normal(y, 0, slope, radius);
  const level = unit(cross([0, 0, 1], out));
  const columns = count / 2;
  return {
    out,
    level,
    upward: cross(out, level),
    count,
    across: columns * spacing,
    up: (columns * height) / (columns > 1 ? 1.21 : 1),
  };
}

const flange = (it: Draw): number[] => [
  it.one([2, 4, 6]),
  it.between(50, 120),
  it.between(50, 160),
  it.between(20, 80),
];
const radius = (it: Draw): number => (it.share() < 0.3 ? 0 : it.between(700, 3000));
const two = (it: Draw): number[] => [
  ...[it.share() < 0.1 ? 0.002 : it.between(800, 5000), ...cases(it), ...flange(it)],
  ...[it.between(-450, -120), it.between(-40, 40), it.between(120, 450), it.between(-40, 40), radius(it)],
  ...[it.between(-500, 500), it.between(-80, -20), it.between(20, 80), it.between(600, 900)],
  ...[it.between(-150, 100), it.between(-450, -120), it.between(500, 1000)],
  ...[it.between(-150, 100), it.between(120, 450), it.between(500, 1000)],
];

/** Pull and shear on one bolt of each foot of two struts, for every load and sign. */
function twoPulls(given: readonly number[]) {
  const [
    reaction = 0,
    drag = 0,
    swing = 0,
    count = 0,
    spacing = 0,
    height = 0,
    off = 0,
    y1 = 0,
    s1 = 0,
    y2 = 0,
    s2 = 0,
    r = 0,
    ...p
  ] = given;
  const [x = 0, py = 0, sy = 0, z = 0] = p;
  const ways = [
    unit(sub([x, py, z], p.slice(4, 7) as unknown as V)),
    unit(sub([x, sy, z], p.slice(7, 10) as unknown as V)),
  ] as const;
  const feet = [
    footOf(count, spacing, height, y1, s1, r),
    footOf(count, spacing, height, y2, s2, r),
  ] as const;
  return casesOf(drag, swing).flatMap(({ side, aft }) =>
    [-1, 1].flatMap((sign) => {
      const load = [sign * aft * reaction, side * reaction];
      const forces = solve(
        [
          [ways[0][0], ways[1][0]],
          [ways[0][1], ways[1][1]],
        ],
        load,
      );
      return feet.map((foot, i) => {
        const force = times(ways[i] as V, forces[i] as number);
        // Taken at the pin, `off` out of the face: the slides tip the foot about its two lines.
        const tip = cross(times(foot.out, off), force);
        return {
          tension:
            Math.abs(dot(force, foot.out)) / foot.count +
            Math.abs(dot(tip, foot.upward)) / foot.across +
            Math.abs(dot(tip, foot.level)) / foot.up,
          shear: Math.hypot(dot(force, foot.level), dot(force, foot.upward)) / foot.count,
        };
      });
    }),
  );
}

const one = (it: Draw): number[] => [
  ...[it.share() < 0.1 ? 0.002 : it.between(800, 5000), ...cases(it), ...flange(it)],
  ...[it.between(-150, 150), it.between(-40, 40), radius(it)],
  ...[it.between(-100, 120), it.between(-150, 150), it.between(500, 950)],
  ...[it.between(380, 480), it.between(300, 370), it.between(-150, 150), it.between(600, 900)],
];

/** Pull and shear on one bolt of a single strut's foot, clamped rigid, for each case. */
function onePulls([
  reaction = 0,
  drag = 0,
  swing = 0,
  count = 0,
  spacing = 0,
  height = 0,
  off = 0,
  y = 0,
  slope = 0,
  r = 0,
  ...p
]: readonly number[]) {
  const [fx = 0, fy = 0, fz = 0, axisX = 0, pinX = 0, clampY = 0, z = 0] = p;
  const foot = footOf(count, spacing, height, y, slope, r);
  const middle = add([fx, fy, fz], times(foot.out, -off));
  return casesOf(drag, swing).map(({ side, aft }) => {
    const forces: readonly (readonly [V, V])[] = [
      [
        [axisX, clampY, z],
        [0, reaction * side, 0],
      ],
      [[pinX, clampY, z], times([pinX - fx, 0, z - fz], (reaction * aft) / (pinX - fx))],
    ];
    const sum = (of: (force: V, moment: V) => number): number =>
      forces.reduce((all, [from, force]) => all + Math.abs(of(force, cross(sub(from, middle), force))), 0);
    return {
      tension:
        sum((f) => dot(f, foot.out)) / count +
        sum((_, m) => dot(m, foot.upward)) / foot.across +
        sum((_, m) => dot(m, foot.level)) / foot.up,
      shear: Math.hypot(
        sum((f) => dot(f, foot.level)) / count,
        sum((f) => dot(f, foot.upward)) / count + sum((_, m) => dot(m, foot.out)) / foot.across,
      ),
    };
  });
}

type Pulls = readonly { readonly tension: number; readonly shear: number }[];
const pulled = (
  name: string,
  draw: (it: Draw) => number[],
  pulls: (given: readonly number[]) => Pulls,
): Apart[] => [
  {
    id: `${name}_TENSION`,
    road: 'vectors in boat axes, every load',
    draw,
    answer: (...given) => Math.max(...pulls(given).map((it) => it.tension)),
    within: 1e-6,
  },
  {
    id: `${name}_SHEAR`,
    road: 'vectors in boat axes, every load',
    draw,
    answer: (...given) => Math.max(...pulls(given).map((it) => it.shear)),
    within: 1e-6,
  },
  {
    id: `${name}_SHARE`,
    road: 'vectors in boat axes, every load; AISC 360 Commentary J3, ISO 898-1, EN 1993-1-8 3.6.1(12)',
    draw: (it) => [...bolt(it), ...draw(it)],
    answer: (...given) =>
      Math.max(...pulls(given.slice(4)).map((it) => share(given.slice(0, 4), it.tension, it.shear))),
    within: 1e-6,
  },
];

/** EN 1993-1-8, 6.2.5: a plate that bends as a cantilever of 1 mm breadth spreads a load until its face yields. */
function reach(t: number, fy: number, bears: number): number {
  // bears·c²/2 = fy·t²/6
  return Math.sqrt(((fy * t * t) / 6) * (2 / bears));
}
const plate = (it: Draw): number[] => [
  it.between(1000, 15_000),
  diameter(it),
  it.between(2, 9),
  it.between(150, 300),
  it.between(6, 20),
];
const spread = (d: number, t: number, fy: number, bears: number, apart: number): number =>
  Math.min(of(d).across + 2 * reach(t, fy, bears), apart);

export const fasteners: readonly Apart[] = [
  ...pulled('LOWER_BOLT', lower, lowerPulls),
  ...pulled('TWO_FOOT_BOLT', two, twoPulls),
  ...pulled('ONE_FOOT_BOLT', one, onePulls),
  {
    id: 'BOLT_LENGTH',
    road: 'ISO 888 by its steps; ISO 7089, 4032 and 261 tables',
    draw: (it) => [it.share() < 0.3 ? it.between(0.4, 15) : it.between(3, 520), diameter(it)],
    answer: (grip, d) => {
      const { washer, nut, pitch } = of(d);
      return LENGTHS.filter((it) => it - grip - washer - washer - nut - pitch - pitch >= -1e-9)[0] ?? null;
    },
    runs: 3000,
  },
  { id: 'CLEARANCE_HOLE', road: 'ISO 273, medium', draw: (it) => [diameter(it)], answer: (d) => of(d).hole },
  {
    id: 'THREAD_BEYOND',
    road: 'ISO 7089 and 4032 tables',
    draw: (it) => [it.between(60, 200), it.between(20, 150), diameter(it)],
    answer: (length, grip, d) => length - (grip + of(d).washer * 2 + of(d).nut),
  },
  {
    id: 'BOLT_FORCE',
    road: 'ISO 898-1 stress areas',
    draw: (it) => [it.between(50, 500), diameter(it)],
    answer: (stress, d) => of(d).stress * stress,
  },
  {
    id: 'TIGHTENING_TORQUE',
    road: 'Shigley, 9th ed., T = K F d, in newtons and metres',
    draw: (it) => [it.between(0.1, 0.3), it.between(2000, 20_000), diameter(it)],
    answer: (k, force, d) => k * force * (d / 1000),
  },
  {
    id: 'PAD_HOLLOW',
    road: 'the angle on the arc',
    draw: (it) => [it.between(40, 250), radius(it)],
    answer: (chord, r) => (r === 0 ? 0 : r * (1 - Math.cos(Math.asin(chord / 2 / r)))),
  },
  {
    id: 'BED_VOLUME',
    road: 'centimetres',
    draw: (it) => [it.between(3000, 20_000), it.between(2, 6), it.whole(2, 8), it.between(0.1, 0.6)],
    answer: (area, gap, count, waste) => {
      const one = (area / 100) * (gap / 10);
      return one * count + one * count * waste;
    },
  },
  {
    id: 'BEAD_LENGTH',
    road: 'corner to corner, and a ring as a polygon of very many sides',
    draw: (it) => [it.between(60, 250), it.between(50, 200), it.one([2, 4, 6]), it.between(6, 14)],
    answer: (width, height, holes, d) => {
      const corners = [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
        [0, 0],
      ] as const;
      const round = corners
        .slice(1)
        .reduce(
          (sum, [x, y], i) => sum + Math.hypot(x - (corners[i]?.[0] ?? 0), y - (corners[i]?.[1] ?? 0)),
          0,
        );
      const sides = 2 ** 20;
      return round + holes * sides * 2 * d * Math.sin(Math.PI / sides);
    },
  },
  {
    id: 'BEAD_VOLUME',
    road: 'discs of a cylinder, summed in centimetres',
    draw: (it) => [it.between(200, 1500), it.between(4, 12)],
    answer: (length, bead) => Math.PI * (bead / 20) ** 2 * (length / 10),
  },
  {
    id: 'PACKING_FACTOR',
    road: 'EN 1993-1-8 3.6.1(12), its reciprocal',
    draw: (it) => [diameter(it), it.between(0.5, 60)],
    answer: (d, t) => (3 * t <= d ? 1 : 1 / Math.max(1, 8 / 9 + t / (3 * d))),
  },
  {
    id: 'PLATE_REACH',
    road: 'EN 1993-1-8 6.2.5 from a cantilever’s yield',
    draw: (it) => plate(it).slice(2),
    answer: reach,
  },
  {
    id: 'PLATE_SHARE',
    road: 'pressure on what the plate spreads the pull over',
    draw: (it) => [...plate(it), it.between(1500, 15_000), it.between(30, 200)],
    answer: (tension, d, t, fy, bears, area, apart) => {
      const ring = Math.PI * ((spread(d, t, fy, bears, apart) / 2) ** 2 - (d / 2) ** 2);
      return tension / bears / Math.min(ring, area);
    },
  },
  {
    id: 'SKIN_SHARE',
    road: 'shear round the edge of what the plate spreads the pull over',
    draw: (it) => [
      ...plate(it),
      it.between(3, 25),
      it.between(3, 8),
      it.between(1500, 15_000),
      it.between(30, 200),
    ],
    answer: (tension, d, t, fy, bears, skin, shear, area, apart) => {
      // A round plate of that area, its hole not counted in.
      const round = 2 * Math.sqrt(area / Math.PI + (d / 2) ** 2);
      return tension / (Math.PI * Math.min(round, spread(d, t, fy, bears, apart)) * skin) / shear;
    },
  },
  {
    id: 'SHIM_BOLT_BENDING',
    road: 'M·c/I on the thread’s core (ISO 724)',
    draw: (it) => [it.between(500, 5000), it.between(5, 70), diameter(it)],
    answer: (shear, packing, d) => {
      const core = d - 1.22687 * of(d).pitch;
      return (((shear * packing) / 2) * (core / 2)) / ((Math.PI / 4) * (core / 2) ** 4);
    },
  },
];
