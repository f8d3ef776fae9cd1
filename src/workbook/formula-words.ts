import { catalogue, tableFunctions } from '../calc/catalogue.ts';
import { STANDARD_WORDS } from '../plan/standard-words.ts';

/** The closed list: nothing else can be called from a formula. */
export const formulaWords: ReadonlySet<string> = new Set([
  ...STANDARD_WORDS,
  ...catalogue.map((it) => it.id),
  ...tableFunctions.map((it) => it.id),
]);
