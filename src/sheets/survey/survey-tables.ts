import { ROWS_WANTED } from '../../calc/survey/suspicious.ts';
import type { Bench } from '../../drawings/reading/bench.ts';
import type { Scene } from '../../drawings/scene.ts';
import { keepOuts } from '../../drawings/survey/keep-outs.ts';
import { obstacles } from '../../drawings/survey/obstacles.ts';
import { plumbLine } from '../../drawings/survey/plumb-line.ts';
import { straightedge } from '../../drawings/survey/straightedge.ts';
import type { Units } from '../../plan/plan.ts';
import { drawing } from '../page/drawing.ts';
import type { Flow } from '../page/flow.ts';
import { blankTable } from './blank-table.ts';

/** A picture at the left, and what to do beside it. */
function shown(flow: Flow, scene: Scene, words: readonly string[], height: number, share: number): void {
  flow.place(height + 2, (sheet, x, y, width) => {
    drawing(sheet, scene, { x, y, width: width * share, height }, []);
    const left = x + width * share + 5;
    let at = y + 1;
    for (const text of words) at = sheet.text(text, left, at, { width: x + width - left }) + 1.5;
  });
}

/** The lines hung and laid against the transom. */
export function linesPages(flow: Flow, bench: Bench, units: Units, lines: () => void, lie: () => void): void {
  flow.next();
  flow.title('Plumb line hung aft of the stern');
  const hung = [
    'Hang a bob on thin line from a batten that stands out over the stern, on the centreline, clear of everything. Let it come to rest.',
    'Tie a tape beside the line, its zero at the waterline mark if you can. At each height hold a rule level and measure from the line forward.',
    'Do not move the line between rows. If it was moved, begin a new sheet.',
  ];
  shown(flow, plumbLine(bench), hung, 57, 0.55);
  blankTable(flow, 'transom_readings', ROWS_WANTED + 2, units);
  flow.next();
  blankTable(flow, 'rudder_readings', ROWS_WANTED, units);
  lines();
  flow.next();
  flow.title('Across the transom, and how level the boat lies');
  const laid = [
    'Its middle on the centreline. Measure the gap at a few distances out, to both sides.',
    'No gap anywhere: the face is flat there. Write 0.',
  ];
  shown(flow, straightedge(), laid, 42, 0.6);
  blankTable(flow, 'camber_readings', 6, units);
  lie();
}

/** What is on the transom, behind it and above it. */
export function clearPages(flow: Flow, bench: Bench, units: Units): void {
  flow.next();
  flow.title('What is in the way');
  const placed = [
    'Draw a rectangle round each thing and measure its four edges: to the side from the centreline, minus to port; plumb up from the waterline mark.',
    'Look inside before you choose a place. Measure inside from the same centreline and mark, through a hole that is already there.',
  ];
  shown(flow, keepOuts(bench), placed, 58, 0.55);
  blankTable(flow, 'keep_outs_outside', 5, units);
  blankTable(flow, 'keep_outs_inside', 5, units);
  flow.next();
  flow.title('What stands above');
  const above = [
    'Swing lines, booms and hatches to where they can come. Measure each thing where the drive unit and its vane pass it.',
    'Fore and aft level from the waterline mark, minus when forward of it; to the side from the centreline, minus to port; the heights of its ends plumb from the mark.',
  ];
  shown(flow, obstacles(bench), above, 58, 0.5);
  blankTable(flow, 'obstacles', 4, units);
}
