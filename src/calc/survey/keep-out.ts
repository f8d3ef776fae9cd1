import { type Answer, NoAnswer } from '../answer.ts';
import { record, type Table } from '../record.ts';

const keepOutsArgument = {
  name: 'keep_outs',
  unit: 'mm',
  meaning: 'The keep-outs: port edge, starboard edge, lower edge, upper edge',
  type: 'table',
} as const;

interface Box {
  readonly port: number;
  readonly starboard: number;
  readonly lower: number;
  readonly upper: number;
}

/** A row as a box, whichever way round its edges were put in. */
const boxOf = ([a = 0, b = 0, c = 0, d = 0]: readonly number[]): Box => ({
  port: Math.min(a, b),
  starboard: Math.max(a, b),
  lower: Math.min(c, d),
  upper: Math.max(c, d),
});

/** Distance between two boxes, mm; negative by how far one would have to move for them to touch. */
function apart(a: Box, b: Box): number {
  const across = Math.max(b.port - a.starboard, a.port - b.starboard);
  const up = Math.max(b.lower - a.upper, a.lower - b.upper);
  if (across < 0 && up < 0) return Math.max(across, up);
  return Math.hypot(Math.max(0, across), Math.max(0, up));
}

const NO_KEEP_OUT = new NoAnswer('No keep-out has been put in.');

/** Least distance from an upright flange to any keep-out, mm; negative where they overlap. */
export const flangeClear = (y: number, z: number, height: number, width: number, keepOuts: Table): Answer => {
  if (keepOuts.length === 0) return NO_KEEP_OUT;
  const flange = {
    port: y - width / 2,
    starboard: y + width / 2,
    lower: z - height / 2,
    upper: z + height / 2,
  };
  let least = Number.POSITIVE_INFINITY;
  for (const row of keepOuts) least = Math.min(least, apart(flange, boxOf(row)));
  return least;
};

export const flangeClearRecord = record({
  id: 'FLANGE_CLEAR',
  title: 'Flange to the nearest keep-out',
  arguments: [
    { name: 'y', unit: 'mm', meaning: "The flange's distance from the centreline" },
    { name: 'z', unit: 'mm', meaning: "The flange's height" },
    { name: 'flange_height', unit: 'mm', meaning: "The flange's own height", least: 0 },
    { name: 'flange_width', unit: 'mm', meaning: "The flange's own width", least: 0 },
    keepOutsArgument,
  ],
  unit: 'mm',
  formula: 'the least distance between the two rectangles; minus the least move apart where they overlap',
  source: 'plane geometry',
  example: {
    given: [20, 100, 100, 60, [[90, 150, 180, 260]]],
    answer: 50,
    tolerance: 1e-12,
    source: 'by hand: 40 across and 30 up, a 3-4-5 triangle',
  },
  run: flangeClear,
});

/** How far above the flange's middle its row of holes `i` is: the rows are spread evenly over its height. */
const rowAbove = (i: number, rows: number, height: number): number => (0.5 - (i + 0.5) / rows) * height;

const holeArguments = [
  { name: 'y', unit: 'mm', meaning: "The flange's distance from the centreline" },
  { name: 'z', unit: 'mm', meaning: "The flange's height" },
  { name: 'spacing', unit: 'mm', meaning: 'Between its two columns of holes', least: 0 },
  { name: 'count', unit: '–', meaning: 'How many holes it has', above: 0 },
  { name: 'flange_height', unit: 'mm', meaning: "The flange's own height", least: 0 },
  { name: 'diameter', unit: 'mm', meaning: "The holes' diameter", least: 0 },
] as const;

/** More holes than any flange has. */
const MOST = 64;

const rowsFor = (count: number): number | NoAnswer =>
  count <= MOST
    ? Math.max(1, Math.round(count / 2))
    : new NoAnswer(`A flange with ${count} holes is none; at most ${MOST} are looked at.`);

/** Least distance from squares of a half width about a flange's holes to any keep-out; negative where they overlap. */
function squaresClear(
  y: number,
  z: number,
  spacing: number,
  count: number,
  height: number,
  half: number,
  keepOuts: Table,
): Answer {
  const rows = rowsFor(count);
  if (rows instanceof NoAnswer) return rows;
  if (keepOuts.length === 0) return NO_KEEP_OUT;
  let least = Number.POSITIVE_INFINITY;
  for (const row of keepOuts) {
    const box = boxOf(row);
    for (let i = 0; i < rows; i++) {
      const up = z + rowAbove(i, rows, height);
      for (let side = -0.5; side <= 0.5; side++) {
        const across = y + side * spacing;
        const square = {
          port: across - half,
          starboard: across + half,
          lower: up - half,
          upper: up + half,
        };
        least = Math.min(least, apart(square, box));
      }
    }
  }
  return least;
}

/** Least distance from the edge of any hole of a flange to any keep-out, mm; negative inside one. */
export const holesClear = (
  y: number,
  z: number,
  spacing: number,
  count: number,
  height: number,
  diameter: number,
  keepOuts: Table,
): Answer => {
  const middles = squaresClear(y, z, spacing, count, height, 0, keepOuts);
  return typeof middles === 'number' ? middles - diameter / 2 : middles;
};

export const holesClearRecord = record({
  id: 'HOLES_CLEAR',
  title: 'Holes to the nearest keep-out',
  arguments: [...holeArguments, keepOutsArgument],
  unit: 'mm',
  formula: 'the least distance from the middle of a hole to a rectangle, less half the diameter',
  source: 'plane geometry',
  example: {
    given: [20, 100, 80, 2, 140, 20, [[90, 150, 140, 260]]],
    answer: 40,
    tolerance: 1e-12,
    source: 'by hand: the starboard hole is 30 across and 40 below, 50 away, less 10',
  },
  run: holesClear,
});

/**
 * Least distance from the backing plates of a flange, a square of an area under each bolt, to any keep-out, mm;
 * negative where one would lie on it. Squares that overlap are one plate of the same outline.
 */
export const platesClear = (
  y: number,
  z: number,
  spacing: number,
  count: number,
  height: number,
  area: number,
  keepOuts: Table,
): Answer => squaresClear(y, z, spacing, count, height, Math.sqrt(area) / 2, keepOuts);

export const platesClearRecord = record({
  id: 'PLATES_CLEAR',
  title: 'Backing plates to the nearest keep-out',
  arguments: [
    ...holeArguments.slice(0, -1),
    { name: 'plate_area', unit: 'mm²', meaning: 'The area of a plate under one bolt', above: 0 },
    keepOutsArgument,
  ],
  unit: 'mm',
  formula: 'the least distance between a square of that area about a hole and a rectangle',
  source: 'plane geometry',
  example: {
    given: [20, 100, 80, 2, 140, 3600, [[120, 180, 170, 260]]],
    answer: 50,
    tolerance: 1e-12,
    source: 'by hand: the starboard plate ends 90 out and at 130: 30 across and 40 up, a 3-4-5 triangle',
  },
  run: platesClear,
});

/** Least distance from the edge of any hole of a flange to the transom's border, mm; negative past it. */
export const holesBorder = (
  y: number,
  z: number,
  spacing: number,
  count: number,
  height: number,
  diameter: number,
  bottom: number,
  top: number,
  halfBreadth: number,
): Answer => {
  const rows = rowsFor(count);
  if (rows instanceof NoAnswer) return rows;
  const highest = z + rowAbove(0, rows, height);
  const lowest = z + rowAbove(rows - 1, rows, height);
  const outermost = Math.max(Math.abs(y - spacing / 2), Math.abs(y + spacing / 2));
  return Math.min(lowest - bottom, top - highest, halfBreadth - outermost) - diameter / 2;
};

export const holesBorderRecord = record({
  id: 'HOLES_BORDER',
  title: "Holes to the transom's border",
  arguments: [
    ...holeArguments,
    { name: 'bottom', unit: 'mm', meaning: "The face's lower edge" },
    { name: 'top', unit: 'mm', meaning: "The face's upper edge" },
    { name: 'half_breadth', unit: 'mm', meaning: 'The usable half width' },
  ],
  unit: 'mm',
  formula: 'the least distance from the middle of a hole to an edge of the face, less half the diameter',
  source: 'plane geometry',
  example: {
    given: [170, 790, 80, 2, 120, 12, 40, 900, 600],
    answer: 104,
    tolerance: 1e-12,
    source: 'by hand: 110 below the top edge, less 6',
  },
  run: holesBorder,
});
