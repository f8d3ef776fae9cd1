import { worstFirst } from '../../calc/limits/worst-first.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { boundWords, limitTitle, roomWords } from '../../workbook/limit-words.ts';
import { styles } from '../lettering/styles.ts';
import { LIMIT_MARK, limitMark } from '../page/limit-mark.ts';
import type { Sheet } from '../page/sheet.ts';
import { statePlate, statePlateWidth } from '../page/state-plate.ts';
import type { SheetInput } from '../sheet-input.ts';

/** Columns of the limits that hold, and space between them, mm. */
const COLUMNS = 3;
const GAP = 5;
const LINE = 4.1;
/** The same for those that must be seen, mm. */
const PRESSING_COLUMNS = 2;
const PRESSING_LINE = 5.2;

const markOf = (it: LimitAnswer) => ({
  state: it.verdict.state,
  value: it.value ?? null,
  low: it.low ?? null,
  high: it.high ?? null,
  roomRatio: it.verdict.ratio ?? null,
});

/** Limits that apply, the worst first. */
const sorted = ({ judgement }: SheetInput): readonly LimitAnswer[] => worstFirst(judgement.limits);

/** Those that must be seen: outside, near, or without an answer. */
const pressing = (all: readonly LimitAnswer[]): readonly LimitAnswer[] =>
  all.filter((it) => it.verdict.state !== 'inside');

/** Least height of the block: what must be seen, and one line. */
export const limitsLeast = (input: SheetInput): number =>
  Math.ceil(pressing(sorted(input)).length / PRESSING_COLUMNS) * PRESSING_LINE + LINE + 1;

/** Mark, state, name, and how far outside or near it is to what is allowed. */
function pressingLine(
  sheet: Sheet,
  it: LimitAnswer,
  { units }: SheetInput,
  x: number,
  y: number,
  width: number,
): void {
  limitMark(sheet, markOf(it), x, y + 0.8);
  const state = x + LIMIT_MARK.cell[0] + 2;
  statePlate(sheet, it.verdict.state, state, y + 0.4);
  const name = state + statePlateWidth(sheet, it.verdict.state) + 2;
  sheet.text(limitTitle(it), name, y + 0.4, { style: 'label' });
  // What is allowed is said where there is room for it.
  const room = x + width - name - sheet.lettering.width(limitTitle(it), styles.label) - 2;
  const all = [roomWords(it, units), it.graded ? boundWords(it, units) : ''].filter((word) => word !== '');
  const whole = all.join(', ');
  const words = sheet.lettering.width(whole, styles.small) <= room ? whole : (all[0] ?? '');
  sheet.text(words, x + width, y + 0.5, { style: 'small', align: 'right' });
}

function insideLine(
  sheet: Sheet,
  it: LimitAnswer,
  input: SheetInput,
  x: number,
  y: number,
  width: number,
): void {
  limitMark(sheet, markOf(it), x, y + (styles.small.line - LIMIT_MARK.cell[1]) / 2);
  sheet.text(limitTitle(it), x + LIMIT_MARK.cell[0] + 2, y, { style: 'small' });
  const room = roomWords(it, input.units).replace(/ room$/, '');
  sheet.text(room, x + width, y, { style: 'label', align: 'right' });
}

/**
 * Those outside, near or unanswered first; those inside a line each, least room first, as far as `to` leaves room:
 * the rest is counted.
 */
export function limitsBlock(
  sheet: Sheet,
  input: SheetInput,
  x: number,
  y: number,
  width: number,
  to: number,
): void {
  const all = sorted(input);
  const first = pressing(all);
  const wide = (width - GAP) / PRESSING_COLUMNS;
  for (const [i, it] of first.entries()) {
    const left = x + (i % PRESSING_COLUMNS) * (wide + GAP);
    pressingLine(sheet, it, input, left, y + Math.floor(i / PRESSING_COLUMNS) * PRESSING_LINE, wide);
  }
  const at = y + Math.ceil(first.length / PRESSING_COLUMNS) * PRESSING_LINE + 0.5;
  const inside = all.filter((it) => it.verdict.state === 'inside');
  if (inside.length === 0) return;
  const lines = Math.min(
    Math.ceil(inside.length / COLUMNS),
    Math.max(0, Math.floor((to - at - LINE) / LINE)),
  );
  const shown = inside.slice(0, lines * COLUMNS);
  const more = inside.length - shown.length;
  const words = shown.length === 0 ? '' : 'Inside, with the room left, least first';
  const counted =
    more === 0
      ? ''
      : `${more} ${shown.length === 0 ? 'are inside' : 'more are inside, with more room'}: see the limit board`;
  sheet.text(`${[words, counted].filter((it) => it !== '').join('; ')}.`, x, at, { style: 'label' });
  const its = (width - GAP * (COLUMNS - 1)) / COLUMNS;
  for (const [i, it] of shown.entries()) {
    const left = x + Math.floor(i / lines) * (its + GAP);
    insideLine(sheet, it, input, left, at + LINE + (i % lines) * LINE, its);
  }
}
