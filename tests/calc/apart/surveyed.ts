import { linearRegression } from 'simple-statistics';
import type { Apart, Draw } from './apart.ts';
import {
  aboutAthwart,
  aboutLength,
  atHeight,
  deg,
  rad,
  shaftDirection,
  size,
  solve,
  turned,
  unit,
  type V,
} from './geometry.ts';

type Rows = readonly (readonly number[])[];

const lie = (it: Draw): number[] => [it.between(-4, 4), it.between(-6, 6)];

/** Readings off a plumb line, some with what they may be off. */
function readings(it: Draw, least = 3): number[][] {
  const [slope, weighed] = [it.between(-0.4, 0.4), it.share() < 0.5];
  return it.many(it.whole(least, 8), (i) => {
    const z = i * it.between(90, 160) - 200;
    return [z, 500 + slope * z + it.between(-4, 4), ...(weighed ? [it.between(1, 8)] : [])];
  });
}

const weightOf = (row: readonly number[], all: Rows): number =>
  all.every((it) => (it[2] ?? 0) > 0) ? 1 / (row[2] as number) ** 2 : 1;

/** The line through rows from the normal equations: unknowns and the inverse of their matrix. */
function fitted(rows: Rows) {
  const w = rows.map((row) => weightOf(row, rows));
  const sum = (f: (x: number, y: number) => number): number =>
    rows.reduce((all, [x = 0, y = 0], i) => all + (w[i] as number) * f(x, y), 0);
  const matrix = [
    [sum(() => 1), sum((x) => x)],
    [sum((x) => x), sum((x) => x * x)],
  ];
  const [start, slope] = solve(matrix, [sum((_, y) => y), sum((x, y) => x * y)]) as [number, number];
  const rest = rows.map(([x = 0, y = 0]) => y - start - slope * x);
  const chi = rest.reduce((all, r, i) => all + (w[i] as number) * r * r, 0);
  const variance = (x: number): number => {
    const [a, b] = solve(matrix, [1, x]) as [number, number];
    return a + b * x;
  };
  return { start, slope, rest, weights: w, chi, variance, slopeVariance: solve(matrix, [0, 1])[1] as number };
}

/** A place of the boat's own, against gravity: heeled by the list, then turned by the trim. */
const seen = ([x, y, z]: V, trim: number, list: number): V =>
  turned(aboutAthwart(trim), turned(aboutLength(list), [x, y, z]));

/** Share of Student's distribution beyond ±t, by Simpson's rule on its density. */
function tails(t: number, freedom: number): number {
  // With t = √freedom·tan θ the density becomes a power of the cosine, and the whole of it a quarter turn.
  const power = (angle: number): number => Math.cos(angle) ** (freedom - 1);
  const over = (to: number): number => {
    const n = 2000;
    const h = to / n;
    let sum = power(0) + power(to);
    for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * power(i * h);
    return (sum * h) / 3;
  };
  return 1 - over(Math.atan(Math.abs(t) / Math.sqrt(freedom))) / over(Math.PI / 2);
}

/** Rows that stand out from a line through all the others: each is left out in turn and foretold by the rest. */
function standOut(rows: Rows, offBy: number): number {
  if (rows.length < 4) return 0;
  const all = fitted(rows);
  return rows.filter((row, i) => {
    const others = rows.filter((_, k) => k !== i);
    const line = fitted(
      rows.every((it) => (it[2] ?? 0) > 0) ? others : others.map(([x = 0, y = 0]) => [x, y]),
    );
    const freedom = others.length - 2;
    const scale = line.chi / freedom;
    const [x = 0, y = 0] = row;
    const own = 1 / weightOf(row, rows);
    const t = (y - line.start - line.slope * x) / Math.sqrt(scale * (own + line.variance(x)));
    return (
      Math.abs(all.rest[i] as number) > Math.max(offBy, row[2] ?? 0) && tails(t, freedom) * rows.length < 0.05
    );
  }).length;
}

const box = (it: Draw): number[] => {
  const [y, z] = [it.between(-500, 300), it.between(0, 700)];
  const edges = [y, y + it.between(20, 300), z, z + it.between(20, 300)];
  return it.share() < 0.3 ? ([edges[1], edges[0], edges[3], edges[2], 3] as number[]) : [...edges, 3];
};
const boxes = (it: Draw): number[][] => it.many(it.whole(1, 3), () => box(it));

/** Least distance from a rectangle about a place to boxes; minus the least move apart where they overlap. */
function clear(y: number, z: number, height: number, width: number, rows: Rows): number {
  return Math.min(
    ...rows.map(([a = 0, b = 0, c = 0, d = 0]) => {
      const [aside, above] = [
        Math.abs(y - (a + b) / 2) - width / 2 - Math.abs(b - a) / 2,
        Math.abs(z - (c + d) / 2) - height / 2 - Math.abs(d - c) / 2,
      ];
      return aside < 0 && above < 0
        ? Math.max(aside, above)
        : size([Math.max(aside, 0), Math.max(above, 0), 0]);
    }),
  );
}

const flange = (it: Draw): number[] => [
  it.between(-300, 300),
  it.between(150, 800),
  it.between(60, 160),
  it.one([2, 4, 6, 8]),
  it.between(60, 200),
];

/** A flange's holes: two columns, rows in the middle of equal strips of its height. */
function holes(y: number, z: number, spacing: number, count: number, height: number): [number, number][] {
  const strip = height / (count / 2);
  return Array.from({ length: count }, (_, i): [number, number] => [
    y + (i % 2 === 0 ? -spacing / 2 : spacing / 2),
    z - height / 2 + strip / 2 + Math.floor(i / 2) * strip,
  ]);
}

/** Least distance from a leaning circle, at every height, to uprights. */
function inAir(
  from: number,
  to: number,
  radius: number,
  y: number,
  x: number,
  low: number,
  lean: number,
  rows: Rows,
  side: number,
): number {
  const along = shaftDirection(lean, side);
  return Math.min(
    ...rows.map(([ox = 0, oy = 0, foot = 0, head = 0, half = 0]) => {
      const [under, over] = [Math.min(foot, head), Math.max(foot, head)];
      const share = [Math.max(from, under), Math.min(to, over)] as const;
      const free = (z: number): number => {
        const [px, py] = atHeight([x, y, low], along, z);
        return Math.hypot(px - ox, py - oy) - radius - half;
      };
      const steps = 4000;
      if (share[0] <= share[1]) {
        let least = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= steps; i++)
          least = Math.min(least, free(share[0] + (i / steps) * (share[1] - share[0])));
        return least;
      }
      const [z, apart] = under > to ? [to, under - to] : [from, from - over];
      return Math.hypot(Math.max(0, free(z)), apart);
    }),
  );
}

export const surveyed: readonly Apart[] = [
  {
    id: 'TRIM_ANGLE',
    road: 'the angle of a right triangle by its hypotenuse',
    draw: (it) => [it.between(-90, 90), it.between(-90, 90), it.between(3000, 12_000)],
    answer: (stern, forward, apart) => deg(Math.asin((stern - forward) / size([stern - forward, apart, 0]))),
  },
  {
    id: 'LEVELLED_HEIGHT',
    road: 'rotation matrices from the boat to gravity',
    draw: (it) => {
      const [trim = 0, list = 0] = lie(it);
      const [aft, , up] = seen([it.between(-600, 600), 0, it.between(-1200, 1000)], trim, list);
      return [up, aft, trim, list];
    },
    // On the centreline only one height of the boat's own is seen so.
    answer: (up, aft, trim, list) => {
      const columns = [seen([1, 0, 0], trim, list), seen([0, 0, 1], trim, list)] as const;
      return solve(
        [
          [columns[0][0], columns[1][0]],
          [columns[0][2], columns[1][2]],
        ],
        [aft, up],
      )[1] as number;
    },
  },
  {
    id: 'LEVELLED_SLOPE',
    road: 'rotation matrices from the boat to gravity, inverted by equations',
    draw: (it) => [it.between(-40, 40), ...lie(it)],
    answer: (slope, trim, list) => {
      const columns = [seen([1, 0, 0], trim, list), seen([0, 0, 1], trim, list)] as const;
      const [x, z] = solve(
        [
          [columns[0][0], columns[1][0]],
          [columns[0][2], columns[1][2]],
        ],
        [Math.sin(rad(slope)), Math.cos(rad(slope))],
      ) as [number, number];
      return deg(Math.atan(x / z));
    },
  },
  {
    id: 'LEVELLED_LEAN',
    road: 'rotation matrices from the boat to gravity, inverted by equations',
    draw: (it) => [it.between(-9, 9), it.between(-9, 9), ...lie(it)],
    answer: (aft, side, trim, list) => own(aft, side, trim, list)[0],
  },
  {
    id: 'LEVELLED_SIDE_LEAN',
    road: 'rotation matrices from the boat to gravity, inverted by equations',
    draw: (it) => [it.between(-9, 9), it.between(-9, 9), ...lie(it)],
    answer: (aft, side, trim, list) => own(aft, side, trim, list)[1],
  },
  {
    id: 'BOB_LEAN',
    road: 'the direction from mark to mark',
    draw: (it) => [it.between(20, 90), it.between(20, 90), it.between(300, 900)],
    answer: (top, foot, apart) => deg(Math.asin(unit([top - foot, 0, apart])[0])),
  },
  {
    id: 'PLUMBED_SLOPE',
    road: 'normal equations, held to a statistics library where rows weigh alike',
    draw: (it) => [readings(it)],
    answer: (rows: Rows) => {
      const slope = rows.every((row) => row.length === 2)
        ? linearRegression(rows as number[][]).m
        : fitted(rows).slope;
      return deg(Math.atan2(-slope, 1));
    },
    within: 1e-8,
  },
  {
    id: 'PLUMBED_SLOPE_ERROR',
    road: 'the inverse of the normal matrix, and what a small change of the slope makes of the angle',
    draw: (it) => [readings(it)],
    answer: (rows: Rows) => {
      const { chi, slope, slopeVariance } = fitted(rows);
      const error = Math.sqrt((chi / (rows.length - 2)) * slopeVariance);
      const step = 1e-6;
      return (deg(Math.atan(slope + step)) - deg(Math.atan(slope - step))) * (error / (2 * step));
    },
    within: 1e-6,
  },
  {
    id: 'PLUMBED_HOLLOW',
    road: 'each reading’s distance to the line, by its normal',
    draw: (it) => [readings(it)],
    answer: (rows: Rows) => {
      const { start, slope } = fitted(rows);
      const [a, b] = unit([-slope, 1, 0]);
      const off = rows.map(([x = 0, y = 0]) => a * x + b * (y - start));
      return off.reduce((most, it) => (Math.abs(it) > Math.abs(most) ? it : most), 0);
    },
    within: 1e-7,
  },
  {
    id: 'PLUMB_LINE_AFT',
    road: 'normal equations',
    draw: (it) => [readings(it), it.between(-200, 300)],
    answer: (rows: Rows, zero) => fitted(rows.map(([x = 0, ...rest]) => [x + zero, ...rest])).start,
    within: 1e-8,
  },
  {
    id: 'PLUMBED_X',
    road: 'two places of the fitted edge, turned into the boat’s own axes by equations, and the line through them',
    draw: (it) => [
      readings(it),
      it.between(-900, 900),
      it.between(-200, 300),
      it.between(200, 600),
      ...lie(it),
    ],
    answer: (rows: Rows, z, zero, lineAft, trim, list) => {
      const { start, slope } = fitted(rows);
      const columns = [seen([1, 0, 0], trim, list), seen([0, 0, 1], trim, list)] as const;
      const places = [-300, 500].map((height) =>
        solve(
          [
            [columns[0][0], columns[1][0]],
            [columns[0][2], columns[1][2]],
          ],
          [lineAft - (start + slope * height), height + zero],
        ),
      );
      const [[x0 = 0, z0 = 0], [x1 = 0, z1 = 0]] = places as [number[], number[]];
      return x0 + ((z - z0) / (z1 - z0)) * (x1 - x0);
    },
    within: 1e-8,
  },
  {
    id: 'SURVEY_CAMBER',
    road: 'gaps of a circle that is known, each a hair off, fitted by trying radii',
    draw: (it) => {
      const radius = it.between(1200, 4000);
      const weighed = it.share() < 0.5;
      return [
        it.many(it.whole(3, 6), () => {
          const half = it.between(100, 500) * it.one([-1, 1]);
          return [
            half,
            radius * (1 - Math.cos(Math.asin(half / radius))) + it.between(-1, 1),
            ...(weighed ? [it.between(1, 6)] : []),
          ];
        }),
      ];
    },
    answer: (rows: Rows) => {
      const misfit = (bend: number): number =>
        rows.reduce((sum, row) => {
          const [half = 0, gap = 0] = row;
          return sum + weightOf(row, rows) * (gap - (1 - Math.cos(Math.asin(half * bend))) / bend) ** 2;
        }, 0);
      // Where the misfit turns, by its slope.
      let [low, high] = [1e-5, 1.5e-3];
      const slope = (at: number): number => misfit(at * (1 + 1e-5)) - misfit(at * (1 - 1e-5));
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2;
        if (slope(middle) > 0) high = middle;
        else low = middle;
      }
      return 2 / (low + high);
    },
    within: 1e-5,
  },
  {
    id: 'SUSPICIOUS_ROWS',
    road: 'each row left out in turn and foretold by the rest; Student’s t by quadrature',
    draw: (it) => {
      const rows = readings(it);
      for (const row of rows) if (it.share() < 0.25) row[1] = (row[1] as number) + it.between(-60, 60);
      return [rows, it.between(0.5, 4)];
    },
    answer: standOut,
    runs: 300,
  },
  {
    id: 'ROWS_GIVEN',
    road: 'counting on one’s fingers',
    draw: (it) => [readings(it)],
    answer: (rows: Rows) => {
      let count = 0;
      for (const _ of rows) count++;
      return count;
    },
  },
  {
    id: 'FLANGE_CLEAR',
    road: 'middles apart less half sizes',
    draw: (it) => [
      it.between(-300, 300),
      it.between(150, 800),
      it.between(60, 200),
      it.between(60, 200),
      boxes(it),
    ],
    answer: clear,
  },
  {
    id: 'HOLES_CLEAR',
    road: 'every hole, row by row',
    draw: (it) => [...flange(it), it.between(6, 14), boxes(it)],
    answer: (y, z, spacing, count, height, d, rows: Rows) =>
      Math.min(...holes(y, z, spacing, count, height).map(([hy, hz]) => clear(hy, hz, 0, 0, rows))) - d / 2,
  },
  {
    id: 'PLATES_CLEAR',
    road: 'every plate, row by row',
    draw: (it) => [...flange(it), it.between(2000, 15_000), boxes(it)],
    answer: (y, z, spacing, count, height, area, rows: Rows) =>
      Math.min(
        ...holes(y, z, spacing, count, height).map(([hy, hz]) =>
          clear(hy, hz, Math.sqrt(area), Math.sqrt(area), rows),
        ),
      ),
  },
  {
    id: 'HOLES_BORDER',
    road: 'every hole to every border',
    draw: (it) => [
      ...flange(it),
      it.between(6, 14),
      it.between(-50, 90),
      it.between(700, 990),
      it.between(300, 600),
    ],
    answer: (y, z, spacing, count, height, d, bottom, top, half) =>
      Math.min(
        ...holes(y, z, spacing, count, height).flatMap(([hy, hz]) => [
          hz - bottom,
          top - hz,
          half - hy,
          half + hy,
        ]),
      ) -
      d / 2,
  },
  {
    id: 'AIR_CLEAR',
    road: 'looking at every height',
    draw: (it) => {
      const from = it.between(900, 1300);
      const obstacle = (): number[] => {
        const foot = it.between(300, 1800);
        const ends = [foot, foot + it.between(50, 900)];
        return [
          it.between(-500, 600),
          it.between(-500, 500),
          ...(it.share() < 0.3 ? ends.reverse() : ends),
          it.between(5, 40),
        ];
      };
      return [
        from,
        from + it.between(100, 700),
        it.between(100, 400),
        it.between(-200, 200),
        it.between(100, 400),
        it.between(150, 400),
        it.between(-15, 15),
        it.many(it.whole(1, 4), obstacle),
        it.between(-15, 15),
      ];
    },
    answer: inAir,
    within: 1e-3,
    runs: 60,
  },
];

/** Leans seen against gravity as the boat's own. */
function own(aft: number, side: number, trim: number, list: number): readonly [number, number] {
  const rows = [0, 1, 2].map((i) =>
    [seen([1, 0, 0], trim, list), seen([0, 1, 0], trim, list), seen([0, 0, 1], trim, list)].map(
      (it) => it[i] as number,
    ),
  );
  const [x = 0, y = 0, z = 0] = solve(rows, [...shaftDirection(aft, side)]);
  return [deg(Math.atan2(x, z)), deg(Math.atan2(y, z))];
}
