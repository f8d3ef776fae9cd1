import { BLANK, type Sheet, TICK } from './sheet.ts';

/** Height of the two lines, mm. */
export const WHO = 17.5;

/** Who, when and where, and how the boat lies. */
export function who(sheet: Sheet, x: number, y: number, width: number): void {
  const third = (width - 8) / 3;
  for (const [i, word] of ['Who', 'When', 'Where'].entries()) {
    const left = x + i * (third + 4);
    sheet.text(word, left, y + BLANK - 4, { style: 'small' });
    sheet.line(left + 10, y + BLANK, left + third, y + BLANK);
  }
  let left = x;
  sheet.text('The boat is', left, y + BLANK + 3.3, { style: 'text' });
  left += 22;
  for (const word of ['afloat', 'on a cradle', 'on a trailer']) {
    sheet.tick(left, y + BLANK + 3);
    sheet.text(word, left + TICK + 2, y + BLANK + 3.3, { style: 'text' });
    left += 32;
  }
}
