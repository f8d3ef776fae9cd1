import { styles } from '../lettering/styles.ts';
import type { Sheet } from './sheet.ts';

const style = styles.strong;
/** Black round the words, mm, and what is left free under a plate. */
const [PAD, GAP] = [1.6, 3];

/** Height that a plate of these words takes with the space under it, mm. */
export const stopPlateHeight = (sheet: Sheet, text: string, width: number): number =>
  sheet.textHeight(text, width - 2 * PAD, style) + 2 * PAD + GAP;

/** Words that nobody may miss, white on black over the whole width; gives back the y under them. */
export function stopPlate(sheet: Sheet, text: string, x: number, y: number, width: number): number {
  const under = y + stopPlateHeight(sheet, text, width);
  sheet.rect(x, y, width, under - y - GAP, { line: 0, fill: 'black' });
  sheet.text(text, x + PAD, y + PAD, { style, width: width - 2 * PAD, paint: 'white' });
  return under;
}

/** The plate across a sheet's head; what the sheet shows begins under it. */
export function headPlate(sheet: Sheet, text: string): void {
  const { x, y, width, height } = sheet.area;
  const under = stopPlate(sheet, text, x, y, width);
  sheet.area = { x, y: under, width, height: height - (under - y) };
}
