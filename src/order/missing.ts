import { labelsOf } from './labels.ts';

/** Why something cannot be said: the readings or results that it needs and that have no value. */
export function missingSentence(what: string, names: readonly string[]): string {
  const labels = labelsOf(names);
  const list = labels.map((label) => `“${label}”`).join(', ');
  return `No answer for ${what}: ${list} ${labels.length === 1 ? 'has' : 'have'} no value.`;
}
