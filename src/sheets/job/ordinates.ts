import type { Hole } from '../../order/holes.ts';
import type { KeepOut } from '../../order/keep-outs-of.ts';
import type { Marked } from '../../order/marked.ts';
import type { Units } from '../../plan/plan.ts';
import { styles } from '../lettering/styles.ts';
import { LINE } from '../marks/mark.ts';
import type { Area } from '../page/paper.ts';
import type { Sheet } from '../page/sheet.ts';
import { keyLetter } from './keep-out-key.ts';
import { spread } from './spread.ts';
import { across } from './stern-marking.ts';

/** Room for the figures above, under and beside the drawing, mm. */
export const ABOVE = 13.5;
export const BESIDE = 24;

const WIDE = 16.5;
const NARROW = 5;
const DOT = 0.45;
const { line } = styles.label;

/** Holes at the same place, lettered once: their numbers, and how far they are off. */
interface Together {
  readonly hole: Hole;
  readonly numbers: string;
}

/** Each hole goes with the first that is nearly where it is, so that none is lost between two. */
export function together(its: readonly Hole[], at: (hole: Hole) => number): Together[] {
  const groups: (readonly [first: Hole, numbers: number[]])[] = [];
  for (const it of its) {
    const near = groups.find(([first]) => Math.abs(at(first) - at(it)) < 0.05);
    if (near === undefined) groups.push([it, [it.number]]);
    else near[1].push(it.number);
  }
  return groups.map(([hole, numbers]) => ({ hole, numbers: numbers.join(', ') }));
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

/** What stands in a row over or under the drawing, with a line to each of its places. */
interface Lettered {
  readonly lines: readonly string[];
  readonly to: readonly [x: number, y: number];
  readonly room: number;
  /** On a thing with a face of its own, the line ends in a dot. */
  readonly dot?: true;
}

function row(sheet: Sheet, its: readonly Lettered[], high: number, area: Area, isUnder: boolean): void {
  const places = spread(
    its.map((it) => it.to[0]),
    its.map((it) => it.room),
    area.x + WIDE / 2,
    area.x + area.width - WIDE / 2,
  );
  const edge = isUnder ? area.y + area.height - high : area.y + high;
  for (const [i, { lines, to, dot }] of its.entries()) {
    const at = places[i] ?? 0;
    const knee = isUnder ? edge - 2.2 : edge + 2.2;
    sheet.lines([to, [to[0], knee], [at, edge + (isUnder ? -0.2 : 0.4)]], { line: LINE.axis });
    if (dot) sheet.circle(to[0], to[1], DOT, { fill: 'black' });
    letter(sheet, lines, at, isUnder ? edge : area.y, 'middle');
  }
}

const rowOfHoles = (all: readonly Hole[], units: Units, on: OnSheet, isUnder: boolean): Lettered[] =>
  together(
    all.filter((it) => (it.place === 'lower') === isUnder),
    across,
  ).map(({ hole, numbers }) => ({
    lines: figures(numbers, hole.acrossFace, units),
    to: on(across(hole), hole.height.exact),
    room: WIDE,
  }));

/** Letters of what holes keep clear of, each reached from its lower edge where no other line runs. */
function rowOfKeepOuts(keepOuts: readonly KeepOut[], on: OnSheet, beside: readonly Lettered[]): Lettered[] {
  const taken = beside.map((it) => it.to[0]);
  return keepOuts.map(({ edges: [a, b, c, d] }, i) => {
    const [foot, head] = [Math.min(c, d), Math.max(c, d)];
    const places = [0.5, 0.25, 0.75, 0.1, 0.9].map((share) => on(a + (b - a) * share, foot));
    const free = places.find(([x]) => taken.every((it) => Math.abs(it - x) > 2 * DOT)) ?? places[0];
    const [x, y] = free ?? on(a, foot);
    taken.push(x);
    const [, top] = on(a, head);
    return { lines: [keyLetter(i)], to: [x, y - Math.min(1.5, (y - top) / 2)], room: NARROW, dot: true };
  });
}

/** Distances up the face, at the right, each with a line to its holes. */
function upColumn(sheet: Sheet, all: readonly Hole[], units: Units, area: Area, on: OnSheet): void {
  const its = together(all, (it) => it.upFace.exact);
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

/**
 * Letters the drawing from astern with every distance that is marked, from the centreline and up the face, and with the
 * letters by which the key names what holes keep clear of.
 */
export function ordinates(
  sheet: Sheet,
  holes: readonly Hole[],
  keepOuts: readonly KeepOut[],
  units: Units,
  area: Area,
  on: OnSheet,
): void {
  const high = linesIn(units) * line;
  row(sheet, rowOfHoles(holes, units, on, false), high, area, false);
  const low = rowOfHoles(holes, units, on, true);
  row(sheet, [...low, ...rowOfKeepOuts(keepOuts, on, low)], high, area, true);
  upColumn(sheet, holes, units, area, on);
}
