import type { Hole } from '../../order/holes.ts';
import type { Marked } from '../../order/marked.ts';
import type { Units } from '../../plan/plan.ts';
import { styles } from '../lettering/styles.ts';
import { LINE } from '../marks/mark.ts';
import type { Area } from '../page/paper.ts';
import type { Sheet } from '../page/sheet.ts';
import { spread } from './spread.ts';
import { across } from './stern-marking.ts';

/** Room for the figures above, under and beside the drawing, mm. */
export const ABOVE = 13.5;
export const BESIDE = 24;

const WIDE = 16.5;
const { line } = styles.label;

/** Holes at the same place, lettered once: their numbers, and how far they are off. */
interface Together {
  readonly hole: Hole;
  readonly numbers: string;
}

function together(all: readonly Hole[], its: readonly Hole[], at: (hole: Hole) => number): Together[] {
  const first = its.filter((it, i) => its.findIndex((other) => Math.abs(at(other) - at(it)) < 0.05) === i);
  return first.map((hole) => ({
    hole,
    numbers: its
      .filter((it) => Math.abs(at(it) - at(hole)) < 0.05)
      .map((it) => all.indexOf(it) + 1)
      .join(', '),
  }));
}

/** Lines of a label: the numbers of the holes, then the distance. */
const figures = (numbers: string, { mm, inches }: Marked, units: Units): readonly string[] => [
  numbers,
  ...(units === 'in' ? [] : [`${mm} mm`]),
  ...(units === 'mm' ? [] : [`${inches} in`]),
];

const linesIn = (units: Units): number => (units === 'both' ? 3 : 2);

function letter(
  sheet: Sheet,
  lines: readonly string[],
  x: number,
  y: number,
  align: 'left' | 'middle',
): void {
  for (const [k, text] of lines.entries())
    sheet.text(text, x, y + k * line, { style: k === 0 ? 'strong' : 'label', align });
}

/** Where a place of the scene lies on the sheet, mm. */
export type OnSheet = (y: number, z: number) => readonly [x: number, y: number];

/** Distances from the centreline, over the drawing or under it, each with a line to its holes. */
function acrossRow(
  sheet: Sheet,
  all: readonly Hole[],
  units: Units,
  area: Area,
  on: OnSheet,
  isUnder: boolean,
): void {
  const its = together(
    all,
    all.filter((it) => (it.place === 'lower') === isUnder),
    across,
  );
  const centres = its.map(({ hole }) => on(across(hole), hole.height.exact)[0]);
  const places = spread(centres, WIDE, area.x + WIDE / 2, area.x + area.width - WIDE / 2);
  const high = linesIn(units) * line;
  const edge = isUnder ? area.y + area.height - high : area.y + high;
  for (const [i, { hole, numbers }] of its.entries()) {
    const at = places[i] ?? 0;
    const [x, y] = on(across(hole), hole.height.exact);
    const knee = isUnder ? edge - 2.2 : edge + 2.2;
    sheet.lines(
      [
        [x, y],
        [x, knee],
        [at, edge + (isUnder ? -0.2 : 0.4)],
      ],
      { line: LINE.axis },
    );
    letter(sheet, figures(numbers, hole.across, units), at, isUnder ? edge : area.y, 'middle');
  }
}

/** Distances up the face, at the right, each with a line to its holes. */
function upColumn(sheet: Sheet, all: readonly Hole[], units: Units, area: Area, on: OnSheet): void {
  const its = together(all, all, (it) => it.upFace.exact);
  const high = linesIn(units) * line;
  const left = area.x + area.width - BESIDE + 6;
  const middles = its.map(({ hole }) => on(0, hole.height.exact)[1]);
  const places = spread(middles, high + 0.5, area.y + ABOVE, area.y + area.height - ABOVE);
  for (const [i, { hole, numbers }] of its.entries()) {
    const level = Math.max(...all.filter((it) => it.upFace.exact === hole.upFace.exact).map(across));
    const [x, y] = on(level, hole.height.exact);
    const at = places[i] ?? y;
    sheet.lines(
      [
        [x, y],
        [left - 3, y],
        [left - 0.7, at],
      ],
      { line: LINE.axis },
    );
    letter(sheet, figures(numbers, hole.upFace, units), left, at - high / 2, 'left');
  }
}

/** Letters the drawing from astern with every distance that is marked: from the centreline, and up the face. */
export function ordinates(sheet: Sheet, holes: readonly Hole[], units: Units, area: Area, on: OnSheet): void {
  acrossRow(sheet, holes, units, area, on, false);
  acrossRow(sheet, holes, units, area, on, true);
  upColumn(sheet, holes, units, area, on);
}
