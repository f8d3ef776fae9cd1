import { cos, degrees, sin } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { type Argument, record, type Table } from '../record.ts';
import { lieArguments } from './lie.ts';
import { fitLine, type Line, lineErrors } from './line.ts';

const readingsArgument = {
  name: 'readings',
  unit: 'mm',
  meaning: 'The readings: height, and level distance from the plumb line forward',
  type: 'table',
} as const satisfies Argument;

const over = (rows: Table, then: (line: Line) => Answer): Answer => {
  const line = fitLine(rows);
  return line instanceof NoAnswer ? line : then(line);
};

/** Slope of a plumbed edge against gravity, degrees from vertical, + when the top is further aft. */
export const plumbedSlope = (rows: Table): Answer => over(rows, (line) => degrees(Math.atan(-line.slope)));

export const plumbedSlopeRecord = record({
  id: 'PLUMBED_SLOPE',
  title: 'Slope of a plumbed edge',
  arguments: [readingsArgument],
  unit: 'deg',
  formula: 'the angle from plumb of the straight line through the readings by least squares',
  source: 'ordinary least squares',
  example: {
    given: [
      [
        [0, 500],
        [100, 400],
        [200, 300],
      ],
    ],
    answer: 45,
    tolerance: 1e-12,
    source: 'by hand: 100 mm aft in 100 mm of height is 45°',
  },
  run: plumbedSlope,
});

/** Standard error of that slope, degrees. */
export const plumbedSlopeError = (rows: Table): Answer =>
  over(rows, (line) => {
    const errors = lineErrors(line);
    return errors instanceof NoAnswer ? errors : degrees(errors.slope / (1 + line.slope * line.slope));
  });

export const plumbedSlopeErrorRecord = record({
  id: 'PLUMBED_SLOPE_ERROR',
  title: 'How well the slope is known',
  arguments: [readingsArgument],
  unit: 'deg',
  formula: "the slope's standard error over 1 + slope², as an angle",
  source: 'ordinary least squares; derivative of the arc tangent',
  example: {
    given: [
      [
        [0, 0],
        [100, 6],
        [200, 0],
      ],
    ],
    answer: (Math.sqrt(24 / 20000) * 180) / Math.PI,
    tolerance: 1e-12,
    source: 'by hand: slope 0, residuals −2, 4 and −2, so a variance of 24 over a spread of 20 000 mm²',
  },
  run: plumbedSlopeError,
});

/** Greatest distance of a reading off the straight line, square to it, mm: + hollow, − bulging. */
export const plumbedHollow = (rows: Table): Answer =>
  over(rows, (line) => {
    const worst = line.residuals.reduce((most, it) => (Math.abs(it) > Math.abs(most) ? it : most), 0);
    return worst / Math.hypot(1, line.slope);
  });

export const plumbedHollowRecord = record({
  id: 'PLUMBED_HOLLOW',
  title: 'Greatest distance off straight',
  arguments: [readingsArgument],
  unit: 'mm',
  formula:
    'the largest residual of the line, square to it; plus where the edge is hollow, minus where it bulges',
  source: 'ordinary least squares',
  example: {
    given: [
      [
        [0, 0],
        [100, 6],
        [200, 0],
      ],
    ],
    answer: 4,
    tolerance: 1e-12,
    source: 'by hand: the mean is 2 and the slope 0, so the middle stands 4 off',
  },
  run: plumbedHollow,
});

/** How far aft of the waterline mark the plumb line hangs, mm, level: the fit's distance at the mark's height. */
export const plumbLineAft = (rows: Table, zero: number): Answer =>
  over(rows, (line) => line.intercept - line.slope * zero);

export const zeroArgument = {
  name: 'zero',
  unit: 'mm',
  meaning: "The tape's zero above the waterline mark",
} as const satisfies Argument;

export const plumbLineAftRecord = record({
  id: 'PLUMB_LINE_AFT',
  title: 'Plumb line aft of the waterline mark',
  arguments: [readingsArgument, zeroArgument],
  unit: 'mm',
  formula: "the fitted line's distance at the height of the waterline mark",
  source: 'ordinary least squares',
  example: {
    given: [
      [
        [0, 500],
        [100, 400],
      ],
      20,
    ],
    answer: 520,
    tolerance: 1e-9,
    source: 'by hand: 20 mm below the zero the face is 20 mm further forward',
  },
  run: plumbLineAft,
});

/** x in the boat's own axes of a plumbed edge at the boat's own height z, mm. */
export function plumbedX(
  rows: Table,
  z: number,
  zero: number,
  lineAft: number,
  trim: number,
  list: number,
): Answer {
  return over(rows, (line) => {
    // Against gravity: level aft of the mark = start + run · plumb above it.
    const run = -line.slope;
    const start = lineAft - line.intercept - run * zero;
    const fall = cos(trim) + run * sin(trim);
    if (!(fall > 1e-9)) return new NoAnswer('The edge lies level, so it has no place at a height.');
    const up = (z * cos(list) - start * sin(trim)) / fall;
    return (start + run * up) * cos(trim) - up * sin(trim);
  });
}

export const plumbedXRecord = record({
  id: 'PLUMBED_X',
  title: 'Where a plumbed edge is at a height',
  arguments: [
    readingsArgument,
    { name: 'z', unit: 'mm', meaning: 'The height above the waterline' },
    zeroArgument,
    { name: 'line_aft', unit: 'mm', meaning: 'The plumb line, aft of the waterline mark' },
    ...lieArguments,
  ],
  unit: 'mm',
  formula: 'the fitted edge, turned back by trim and list, at that height',
  source: 'ordinary least squares; rotation of axes',
  example: {
    given: [
      [
        [-1000, 300],
        [-500, 250],
      ],
      400,
      100,
      400,
      (Math.atan2(3, 4) * 180) / Math.PI,
      60,
    ],
    answer: 100,
    tolerance: 1e-9,
    source:
      'by hand: 100 up the edge is 200 aft; turned by 3-4-5 that is 400 up at 60° of list, and 160 − 60 aft',
  },
  run: plumbedX,
});
