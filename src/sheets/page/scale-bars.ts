import { LINE } from '../marks/mark.ts';
import type { Sheet } from './sheet.ts';

/** Height that both bars take with their words, mm. */
export const SCALE_BARS = 17;

const MM_PER_IN = 25.4;

function bar(sheet: Sheet, x: number, y: number, length: number, parts: number, words: string): void {
  sheet.line(x, y, x + length, y, { line: LINE.thin });
  for (let i = 0; i <= parts; i++) {
    const isEnd = i === 0 || i === parts;
    sheet.line(x + (length * i) / parts, y - (isEnd ? 2.5 : 1.2), x + (length * i) / parts, y);
  }
  sheet.text(words, x + length + 2, y - 3, { style: 'label' });
}

/**
 * A bar of 100 mm and one of 4 in, to hold a ruler against before anything is taken from the page. Gives back the y
 * under them.
 */
export function scaleBars(sheet: Sheet, x: number, y: number): number {
  bar(sheet, x, y + 3, 100, 10, '100 mm');
  bar(sheet, x, y + 9, 4 * MM_PER_IN, 8, '4 in');
  return (
    sheet.text(
      'Printed at 100 %? Measure both bars. If either is off, print again without “fit to page”.',
      x,
      y + 10.5,
      {
        style: 'small',
      },
    ) + 2
  );
}
