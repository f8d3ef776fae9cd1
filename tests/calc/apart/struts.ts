import type { Apart, Draw } from './apart.ts';
import {
  add,
  cross,
  deg,
  dot,
  face,
  normal,
  rad,
  size,
  solve,
  sub,
  times,
  unit,
  type V,
} from './geometry.ts';

const place = (it: Draw): number[] => [it.between(-100, 500), it.between(-500, 500), it.between(400, 900)];

/** Two struts from their feet to a clamp between them. */
const pins = (it: Draw): number[] => [
  ...[it.between(250, 500), it.between(-80, -20), it.between(20, 80), it.between(600, 900)],
  ...[it.between(-150, 100), it.between(-450, -120), it.between(500, 1000)],
  ...[it.between(-150, 100), it.between(120, 450), it.between(500, 1000)],
];
const cases = (it: Draw): number[] => [it.between(800, 5000), it.between(0.15, 0.6), it.between(15, 75)];
const tube = (it: Draw): number[] => {
  const od = it.between(25, 60);
  return [od, it.between(1.5, 5), it.between(150, 300), it.between(150_000, 210_000), it.between(1.1, 1.9)];
};

interface Arm {
  readonly along: V;
  readonly long: number;
}
const armsOf = (p: readonly number[]): readonly [Arm, Arm] => {
  const [x = 0, y1 = 0, y2 = 0, z = 0] = p;
  const arm = (foot: V, y: number): Arm => ({
    along: unit(sub([x, y, z], foot)),
    long: size(sub([x, y, z], foot)),
  });
  return [arm(p.slice(4, 7) as unknown as V, y1), arm(p.slice(7, 10) as unknown as V, y2)];
};

/** Every load on the upper clamp: both cases, every sign. */
const loads = (reaction: number, drag: number, swing: number): (readonly [number, number])[] =>
  [
    [drag, 1],
    [Math.sin(rad(swing)), Math.cos(rad(swing))],
  ].flatMap(([aft = 0, side = 0]) =>
    [-1, 1].flatMap((a) => [-1, 1].map((b) => [a * aft * reaction, b * side * reaction] as const)),
  );

/** What two struts bear under each load: pull is plus. */
function axial(reaction: number, drag: number, swing: number, p: readonly number[]) {
  const arms = armsOf(p);
  const [{ along: a }, { along: b }] = arms;
  return loads(reaction, drag, swing).map(([x, y]) => {
    // The struts draw the clamp towards their feet; together with the load that leaves nothing level.
    const [port, starboard] = solve(
      [
        [-a[0], -b[0]],
        [-a[1], -b[1]],
      ],
      [-x, -y],
    ) as [number, number];
    return { arms, forces: [port, starboard] as const };
  });
}

/** AISC 360 E3 with K = 1, by the ratio of yield to Euler's stress, which is 2.25 where the branches change. */
export function aisc(od: number, wall: number, fy: number, e: number, long: number): number {
  const bore = od - 2 * wall;
  const area = Math.PI * wall * (od - wall);
  const inertia = (Math.PI / 64) * (od ** 4 - bore ** 4);
  const euler = (Math.PI ** 2 * e * inertia) / (long * long) / area;
  const ratio = fy / euler;
  return area * (Math.sqrt(ratio) * Math.PI <= 4.71 ? fy * Math.exp(ratio * Math.log(0.658)) : 0.877 * euler);
}

const footGiven = (it: Draw) => {
  const rows = it.many(4, (i) => [200 + i * 250, it.between(-60, 120)]);
  return [
    it.between(-500, 500),
    it.between(250, 900),
    it.between(20, 80),
    it.between(-40, 40),
    it.share() < 0.3 ? 0 : it.between(700, 3000),
    it.share() < 0.5 ? [] : rows,
  ];
};
const footPin = (y: number, z: number, off: number, rake: number, radius: number, rows: number[][]): V =>
  add([face(y, z, rake, radius, rows), y, z], times(normal(y, z, rake, radius, rows), off));

const plan = (it: Draw): number[] => {
  const p = pins(it);
  return [p[0], p[1], p[2], p[4], p[5], p[7], p[8]] as number[];
};
/** Where two lines cross, in homogeneous coordinates. */
function crossing([x = 0, y1 = 0, y2 = 0, ax = 0, ay = 0, bx = 0, by = 0]: readonly number[]): readonly [
  number,
  number,
] {
  const line = (px: number, py: number, qx: number, qy: number): V => cross([px, py, 1], [qx, qy, 1]);
  const [u, v, w] = cross(line(ax, ay, x, y1), line(bx, by, x, y2));
  return [u / w, v / w];
}

const direction =
  (i: number): Apart['answer'] =>
  (y, z, off, rake, radius, rows) =>
    footPin(y, z, off, rake, radius, rows)[i] as number;

export const struts: readonly Apart[] = [
  {
    id: 'STRUT_SPREAD',
    road: 'the difference of two bearings',
    draw: plan,
    answer: (x, y1, y2, ax, ay, bx, by) => {
      const turn = Math.abs(deg(Math.atan2(y1 - ay, x - ax)) - deg(Math.atan2(y2 - by, x - bx)));
      return Math.min(turn, 360 - turn);
    },
  },
  {
    id: 'ARMS_MEET',
    road: 'crossing of two lines in homogeneous coordinates',
    draw: (it) => [it.between(250, 500), ...plan(it)],
    answer: (axis, ...p) => crossing(p)[0] - axis,
  },
  {
    id: 'ARMS_MEET_ASIDE',
    road: 'crossing of two lines in homogeneous coordinates',
    draw: (it) => [it.between(-200, 200), ...plan(it)],
    answer: (axis, ...p) => crossing(p)[1] - axis,
  },
  {
    id: 'FOOT_PIN_X',
    road: 'the cross product of the face’s tangents',
    draw: footGiven,
    answer: direction(0),
    within: 1e-7,
  },
  {
    id: 'FOOT_PIN_Y',
    road: 'the cross product of the face’s tangents',
    draw: footGiven,
    answer: direction(1),
    within: 1e-7,
  },
  {
    id: 'FOOT_PIN_Z',
    road: 'the cross product of the face’s tangents',
    draw: footGiven,
    answer: direction(2),
    within: 1e-7,
  },
  {
    id: 'PIN_TO_PIN',
    road: 'Pythagoras twice, and the law of cosines between them',
    draw: (it) => [...place(it), ...place(it)],
    answer: (a, b, c, d, e, f) => {
      const [p, q]: [V, V] = [
        [a, b, c],
        [d, e, f],
      ];
      return Math.sqrt(dot(p, p) + dot(q, q) - 2 * dot(p, q));
    },
  },
  {
    id: 'STRUT_RISE',
    road: 'the sine of the rise: height over length',
    draw: (it) => {
      const [a, b] = [place(it), place(it)];
      return it.share() < 0.2 ? [...a, ...b.slice(0, 2), a[2] as number] : [...a, ...b];
    },
    answer: (a, b, c, d, e, f) => deg(Math.asin(Math.abs(f - c) / size([d - a, e - b, f - c]))),
  },
  {
    id: 'TWO_STRUT_LIFT',
    road: 'the clamp’s balance under every load and sign',
    draw: (it) => [...cases(it), ...pins(it)],
    answer: (reaction, drag, swing, ...p) =>
      Math.max(
        ...axial(reaction, drag, swing, p).map(({ arms: [a, b], forces: [s, t] }) =>
          Math.abs(s * a.along[2] + t * b.along[2]),
        ),
      ),
  },
  {
    id: 'ONE_STRUT_LIFT',
    road: 'a force fore and aft carried along a sloping strut leaves its height over its length',
    draw: (it) => [...cases(it), it.between(3, 50)],
    answer: (reaction, drag, swing, rise) =>
      Math.max(...loads(reaction, drag, swing).map(([x]) => Math.abs(x))) * Math.tan(rad(rise)),
  },
  {
    id: 'TWO_STRUT_SHARE',
    road: 'the clamp’s balance under every load and sign, against AISC 360 E3',
    draw: (it) => [...cases(it), ...tube(it), ...pins(it)],
    answer: (reaction, drag, swing, od, wall, fy, e, safety, ...p) =>
      Math.max(
        ...axial(reaction, drag, swing, p).flatMap(({ arms, forces }) =>
          arms.map(({ long }, i) => {
            const force = forces[i] as number;
            const bears = force > 0 ? Math.PI * wall * (od - wall) * fy : aisc(od, wall, fy, e, long);
            return (Math.abs(force) / bears) * safety;
          }),
        ),
      ),
  },
  {
    id: 'ONE_STRUT_SHARE',
    road: 'stress of a cantilever plus share of AISC 360 E3, for each load',
    draw: (it) => [...cases(it), ...tube(it), it.between(150, 1500), it.between(20, 90)],
    answer: (reaction, drag, swing, od, wall, fy, e, safety, long, forward) => {
      const inertia = (Math.PI / 64) * (od ** 4 - (od - 2 * wall) ** 4);
      return Math.max(
        ...loads(reaction, drag, swing).map(
          ([x, y]) =>
            ((Math.abs(y) * (long + forward) * od) / 2 / inertia / fy +
              Math.abs(x) / aisc(od, wall, fy, e, long)) *
            safety,
        ),
      );
    },
  },
];
