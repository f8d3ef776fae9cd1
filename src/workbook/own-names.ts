import { formulaWords } from './formula-words.ts';

/** Words the engine would read as something else. */
const TAKEN = new Set(['e', 'r', 'c', 'true', 'false', 'pi']);

/** Why an own cell or limit cannot have a name; undefined when it can. */
export function nameRefusal(name: string, isTaken: (name: string) => boolean): string | undefined {
  if (!/^[a-z][a-z0-9_]{0,63}$/.test(name)) {
    return `“${name}” cannot be a cell's name: use small letters, digits and _, a letter first, 64 at most.`;
  }
  if (/^[a-z]{1,3}\d+$/.test(name) || /^r\d*c\d*$/.test(name)) {
    return `“${name}” cannot be a cell's name: it would be read as a column and a row.`;
  }
  if (TAKEN.has(name) || formulaWords.has(name.toUpperCase())) {
    return `“${name}” cannot be a cell's name: formulas already use that word.`;
  }
  return isTaken(name) ? `There is a cell named ${name} already.` : undefined;
}
