import type { Bench } from '../../drawings/reading/bench.ts';
import type { Scene } from '../../drawings/scene.ts';
import { keepOuts } from '../../drawings/survey/keep-outs.ts';
import { obstacles } from '../../drawings/survey/obstacles.ts';
import { plumbLine } from '../../drawings/survey/plumb-line.ts';
import { straightedge } from '../../drawings/survey/straightedge.ts';
import type { Units } from '../../plan/plan.ts';
import { drawing } from '../page/drawing.ts';
import type { Flow } from '../page/flow.ts';
import type { Cell, Column, Row } from '../page/table.ts';
import { blankUnit } from './entry.ts';

const rows = (count: number, columns: number, first: (i: number) => string): Row[] =>
  Array.from({ length: count }, (_, i) => ({
    cells: [first(i), ...Array.from({ length: columns }, (): Cell => ({ blank: true }))],
  }));

const number = (i: number): string => String(i + 1);

/** A picture at the left, and what to do beside it. */
function shown(flow: Flow, scene: Scene, words: readonly string[], height: number, share = 0.5): void {
  flow.place(height + 2, (sheet, x, y, width) => {
    drawing(sheet, scene, { x, y, width: width * share, height }, []);
    const left = x + width * share + 5;
    let at = y + 1;
    for (const text of words) at = sheet.text(text, left, at, { width: x + width - left }) + 1.5;
  });
}

/** The survey's tables: the lines hung and laid, the boat's list and trim, and what is in the way. */
export function surveyTables(flow: Flow, bench: Bench, units: Units): void {
  const mm = blankUnit('mm', units);
  const [height, distance, off]: readonly Column[] = [
    { head: `Height above the waterline mark, ${mm}` },
    { head: `Distance from the line, level, ${mm}` },
    { head: '±', width: 14 },
  ];
  const remark: Column = { head: 'With, remarks', share: 1.4 };
  const row: Column = { head: 'Row', width: 8 };
  const lined = [row, height, distance, off, remark] as Column[];
  flow.next();
  flow.title('Plumb line hung aft of the stern');
  shown(
    flow,
    plumbLine(bench),
    [
      'Hang a bob on thin line from a batten that stands out over the stern, on the centreline, clear of everything. Let it come to rest.',
      'Mark heights on the line: the waterline mark is 0. At each height, hold the tape level and measure from the line forward to the transom, at least three times, from its lower edge to its upper.',
      'Below, measure in the same way from the line to the after edge of the boat’s own rudder, helm amidships. Heights under water are minus.',
      'Do not move the line between rows. If it was moved, begin a new table.',
    ],
    92,
    0.55,
  );
  flow.section('From the line to the transom', 30);
  flow.table(lined, rows(6, 4, number));
  flow.section('From the line to the after edge of the boat’s own rudder', 30);
  flow.table(lined, rows(4, 4, number));
  flow.next();
  flow.title('Across the transom, and how level the boat lies');
  shown(
    flow,
    straightedge(),
    [
      'Lay a straightedge level across the face, its middle on the centreline. Measure the gap at the same distance to port and to starboard, and write their mean.',
      'No gap anywhere: the face is flat there. Write 0.',
    ],
    46,
    0.6,
  );
  flow.table(
    [
      row,
      { head: `Height, ${mm}` },
      { head: `Half span, ${mm}` },
      { head: `Gap, mean of both sides, ${mm}` },
      off as Column,
      remark,
    ],
    rows(4, 5, number),
  );
  flow.section('How level the boat lies while you measure', 40);
  flow.text(
    'A level and a plumb line follow gravity, not the boat. These two readings take the difference out again.',
    'small',
  );
  flow.table(
    [
      { head: 'Reading', share: 2 },
      { head: 'Degrees', width: 30 },
      { head: '±', width: 14 },
      { head: 'With, remarks', share: 1 },
    ],
    [
      {
        cells: [
          'List: level laid athwartships on a line known to be level in the boat, such as the cabin sole or a bulkhead’s edge. Plus when starboard is lower.',
          { blank: true, unit: '°' },
          { blank: true },
          { blank: true },
        ],
      },
      {
        cells: [
          'Trim: level laid fore and aft along a line known to be parallel to the waterline marked on the hull. Plus when the stern is lower than it should be.',
          { blank: true, unit: '°' },
          { blank: true },
          { blank: true },
        ],
      },
    ],
  );
  flow.next();
  flow.title('What is in the way');
  shown(
    flow,
    keepOuts(bench),
    [
      'Outside: exhaust, drains, ladder, lights, cables through the hull. Inside: stringers, lockers, wiring, tanks, steering. Look inside before you choose a place; measure inside from the same centreline and mark, through a hole that is already there.',
      'Draw a rectangle round each and measure its four edges: to the side from the centreline, minus to port; up from the waterline mark.',
    ],
    60,
    0.55,
  );
  flow.table(
    [
      { head: 'What', share: 1.6 },
      { head: 'Outside, inside', width: 24 },
      { head: 'Port edge' },
      { head: 'Starboard edge' },
      { head: 'Lower edge' },
      { head: 'Upper edge' },
      off as Column,
    ],
    Array.from({ length: 5 }, () => ({
      cells: [
        { blank: true },
        { text: 'out  ·  in', style: 'text' },
        { blank: true },
        { blank: true },
        { blank: true },
        { blank: true },
        { blank: true },
      ],
    })),
  );
  flow.section('Above the deck', 40);
  shown(
    flow,
    obstacles(bench),
    [
      'Everything the drive unit or its vane could strike: rail, ladder, davits, arch, backstay. Measure the height of its nearest point above the waterline mark, how far it lies aft of the mark, and how far to the side of the centreline.',
      'Swing lines, booms and hatches to where they can come.',
    ],
    50,
    0.5,
  );
  flow.table(
    [
      { head: 'What', share: 1.6 },
      { head: 'Height' },
      { head: 'Aft of the mark' },
      { head: 'To the side' },
      off as Column,
    ],
    Array.from({ length: 4 }, () => ({
      cells: Array.from({ length: 5 }, () => ({ blank: true as const })),
    })),
  );
}
