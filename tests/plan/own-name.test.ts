import { expect, it } from 'vitest';
import { catalogue, tableFunctions } from '../../src/calc/catalogue.ts';
import { wordRefusal } from '../../src/plan/own-name.ts';
import { STANDARD_WORDS } from '../../src/plan/standard-words.ts';
import { formulaWords } from '../../src/workbook/formula-words.ts';

it('knows every word that a formula may use', () => {
  expect(
    new Set([...STANDARD_WORDS, ...catalogue.map((it) => it.id), ...tableFunctions.map((it) => it.id)]),
  ).toEqual(formulaWords);
  for (const word of formulaWords) expect(wordRefusal(word.toLowerCase())).toBeDefined();
});

it('lets a plain word through', () => {
  for (const name of ['gap', 'my_gap', 'gap_2', 'abcd1', 'a'.repeat(64)])
    expect(wordRefusal(name)).toBeUndefined();
});
