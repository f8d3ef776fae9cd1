import { ROWS_WANTED } from '../../calc/survey/suspicious.ts';

/** How often rows so few show that one of them was read 20 mm wrong, where the others are within 3 mm. */
const FOUND: Readonly<Record<number, string>> = { 4: 'about once in eight times', 5: 'every other time' };

/** What too few rows of a plumb line cannot show; undefined when there are none yet, or enough. */
export function fewRowsSentence(rows: number): string | undefined {
  if (rows === 0 || rows >= ROWS_WANTED) return undefined;
  const found = FOUND[rows];
  const wanted = `Take six rows or more where that matters: with six it shows nine times in ten.`;
  return found === undefined
    ? `So few rows cannot show that one of them was read wrong. ${wanted}`
    : `With ${rows} rows, one that was read 20 mm wrong shows ${found}. ${wanted}`;
}
