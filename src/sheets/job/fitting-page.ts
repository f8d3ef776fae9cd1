import { stopPoints } from '../../fitting/stop-points.ts';
import { tighteningOrder } from '../../fitting/tightening.ts';
import type { Ask } from '../../order/ask.ts';
import type { Printout } from '../page/printout.ts';
import type { SheetInput } from '../sheet-input.ts';
import { asFitted, asFittedHeight } from './as-fitted.ts';
import { boltList } from './bolt-list.ts';
import { cutList } from './cut-list.ts';
import { HEADING, heading } from './heading.ts';
import { limitsBlock, limitsLeast } from './limits-block.ts';
import { tickedLines } from './ticked-lines.ts';

/** Space between two columns, mm. */
const GAP = 6;

/** Second page: where to stop, what to cut and bolt, in which order, how much room there is, and what was fitted. */
export function fittingPage(printout: Printout, input: SheetInput): void {
  const sheet = printout.sheet();
  const { x, width } = sheet.area;
  const { answer, units } = input;
  const ask: Ask = (name) => answer(name).value;
  const brief = units === 'in' ? 'in' : 'mm';
  let y = sheet.text('Job sheet: drill, cut, bolt, tighten', x, sheet.area.y, { style: 'page' }) + 0.5;
  y = heading(sheet, 'Stop points: go on only when the reading is met', x, y, width);
  const stops = stopPoints(ask, brief).map(({ before, must, otherwise }) => ({
    first: before,
    text: `${must} If not: ${otherwise.charAt(0).toLowerCase()}${otherwise.slice(1)}`,
  }));
  y = tickedLines(sheet, stops, x, y, width);
  y = heading(sheet, 'Bolts', x, y, width);
  y = boltList(sheet, ask, units, x, y, width);
  const half = (width - GAP) / 2;
  const right = x + half + GAP;
  const cut = cutList(sheet, ask, units, x, heading(sheet, 'Cut', x, y, half), half);
  const order = tighteningOrder(ask).map(({ what }, i) => ({ text: `${i + 1}  ${what}` }));
  const top = heading(sheet, 'Tighten in this order, once all has hardened', right, y, half);
  y = Math.max(cut, tickedLines(sheet, order, right, top, half));
  const last = sheet.bottom - asFittedHeight(answer) - HEADING;
  const needed = HEADING + limitsLeast(input);
  if (y + needed <= last) {
    limitsBlock(sheet, input, x, heading(sheet, 'Limits, the worst first', x, y, width), width, last);
  } else {
    sheet.text('The limits are on the next sheet.', x, y + 1, { style: 'strong' });
    const more = printout.sheet();
    const under = more.text('Job sheet: limits, the worst first', x, more.area.y, { style: 'page' }) + 2;
    limitsBlock(more, input, x, under, width, more.bottom);
  }
  y = heading(sheet, 'As fitted: planned, and what you read', x, last, width);
  asFitted(sheet, answer, units, x, y, width);
}
