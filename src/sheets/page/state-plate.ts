import type { LimitState } from '../../drawings/limits.ts';
import { styles } from '../lettering/styles.ts';
import { LINE } from '../marks/mark.ts';
import type { Sheet } from './sheet.ts';

/** How much higher than its mark a state's word is, mm. */
export const LIMIT_WORD_PAD = 1;

/** Width of a state's word with its plate or frame, mm. */
export const statePlateWidth = (sheet: Sheet, state: LimitState): number =>
  sheet.lettering.width(state, styles.label) + 2;

/** A limit's state as a word: outside on a black plate, near in a frame, no answer in a dashed one, inside plain. */
export function statePlate(sheet: Sheet, state: LimitState, x: number, y: number): void {
  const height = styles.label.line + 0.5;
  const width = statePlateWidth(sheet, state);
  if (state === 'outside') sheet.rect(x, y, width, height, { line: 0, fill: 'black' });
  if (state === 'near') sheet.rect(x, y, width, height, { line: LINE.thin });
  if (state === 'no answer') sheet.rect(x, y, width, height, { line: LINE.thin, dash: [0.8, 0.8] });
  sheet.text(state, x + 1, y + 0.25, { style: 'label', paint: state === 'outside' ? 'white' : 'black' });
}
