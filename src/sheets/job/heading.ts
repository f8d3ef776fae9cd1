import { LINE } from '../marks/mark.ts';
import type { Sheet } from '../page/sheet.ts';

/** Height of a heading with its rule, mm. */
export const HEADING = 8;

/** A heading with a rule over it, on a sheet that is set by hand; gives back the y under it. */
export function heading(sheet: Sheet, text: string, x: number, y: number, width: number): number {
  sheet.line(x, y + 1.5, x + width, y + 1.5, { line: LINE.outline });
  return sheet.text(text, x, y + 2.4, { style: 'section' }) + (HEADING - 7.4);
}
