/** A formula's text with a name put in, and where the caret then stands. */
export interface Inserted {
  readonly text: string;
  readonly caret: number;
}

const GLUES = /[A-Za-z0-9_.)]$/;

/**
 * Puts a name or a function into a text in place of what is selected. A text that is no formula becomes one; a name
 * never runs into the word before it.
 */
export function insertInto(text: string, from: number, to: number, insert: string): Inserted {
  const isFormula = text.trimStart().startsWith('=');
  const before = isFormula ? text.slice(0, from) : `=${text.slice(0, from).trim()}`;
  const start = isFormula && !before.trimStart().startsWith('=') ? `=${before}` : before;
  const glued = GLUES.test(start) ? `${start} ${insert}` : `${start}${insert}`;
  const after = start === before ? text.slice(to) : text.slice(to).replace(/^\s*=/, '');
  return { text: glued + after, caret: glued.length };
}
