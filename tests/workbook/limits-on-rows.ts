import { limitCells, resultNamed } from '../../src/plan/book.ts';

/** Whether a result rests on how many rows a survey table has, itself or through the results it uses. */
function looksAtRows(name: string): boolean {
  const formula = resultNamed(name)?.formula ?? '';
  return /\bROWS_GIVEN\(/.test(formula) || (formula.match(/\b[a-z]\w*\b/g) ?? []).some(looksAtRows);
}

/** Limits that judge only what a survey's rows say, so none of them applies where nothing is listed. */
export const limitsOnRows: readonly string[] = limitCells
  .filter(({ applies }) => typeof applies === 'string' && looksAtRows(applies))
  .map(({ name }) => name);
