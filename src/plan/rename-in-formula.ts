/** Texts in quotes, numbers, words that call a function, words that name a cell: in the order they are looked for. */
const WORDS = /"(?:[^"]|"")*"|(?:\d+\.?\d*|\.\d+)(?:[eE][+\-−]?\d+)?|([A-Za-z_][A-Za-z0-9_.]*)(\s*\()?/g;

/** A formula with one cell's name written anew wherever it is used; texts in quotes and functions keep theirs. */
export const renameInFormula = (formula: string, from: string, to: string): string =>
  formula.replace(WORDS, (all, word?: string, call?: string) =>
    word !== undefined && call === undefined && word.toLowerCase() === from ? to : all,
  );

/** Whether a formula uses a cell. */
export const formulaUses = (formula: string, name: string): boolean =>
  [...formula.matchAll(WORDS)].some(
    ([, word, call]) => word !== undefined && call === undefined && word.toLowerCase() === name,
  );
