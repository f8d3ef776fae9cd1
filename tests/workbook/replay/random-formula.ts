import fc from 'fast-check';
import { catalogue, tableFunctions } from '../../../src/calc/catalogue.ts';
import { formulaWords } from '../../../src/workbook/formula-words.ts';

const STANDARD = [...formulaWords].filter((word) =>
  [...catalogue, ...tableFunctions].every(({ id }) => id !== word),
);

const SIGNS = ['+', '-', '*', '/', '^', '&', '=', '<>', '<', '>', '<=', '>='];

const literal = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: -20, max: 2000 }).map((n) => String(n / 4)) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      '0',
      '1',
      '2',
      '0.1',
      '0.3',
      '1e-13',
      '1e-14',
      '1e9',
      '1e200',
      '1e308',
      '1e-320',
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      '""',
      '"cored"',
      '"CORED"',
      '"5%"',
      '" 12 "',
      '"1e999"',
      '"true"',
      '"ä"',
      '"a""b"',
    ),
  },
  { weight: 1, arbitrary: fc.constantFrom('TRUE', 'false', 'TRUE()', 'PI()') },
);

/** A formula as an owner may type it, over the names given: rightly called functions mostly, wrongly called ones too. */
export function randomFormula(names: readonly string[]): fc.Arbitrary<string> {
  const name = fc.constantFrom(...names);
  const { part } = fc.letrec<{ part: string }>((tie) => {
    const inner = tie('part');
    const args = (least: number, most: number) => fc.array(inner, { minLength: least, maxLength: most });
    const call = (word: string, values: readonly string[]): string => `${word}(${values.join('; ')})`;
    const standard = fc
      .constantFrom(...STANDARD)
      .chain((word) => args(0, 4).map((values) => call(word, values)));
    const usual = fc
      .constantFrom<[string, number, number]>(
        ['IF', 3, 3],
        ['IFERROR', 2, 2],
        ['AND', 2, 3],
        ['OR', 2, 3],
        ['NOT', 1, 1],
        ['MIN', 1, 4],
        ['MAX', 1, 4],
        ['SUM', 1, 4],
        ['AVERAGE', 1, 4],
        ['COUNT', 1, 4],
        ['ABS', 1, 1],
        ['SQRT', 1, 1],
        ['ROUND', 1, 2],
        ['ROUNDUP', 1, 2],
        ['ROUNDDOWN', 1, 2],
        ['MOD', 2, 2],
        ['ATAN2', 2, 2],
        ['POWER', 2, 2],
        ['COS', 1, 1],
        ['SIN', 1, 1],
        ['RADIANS', 1, 1],
        ['INT', 1, 1],
        ['SIGN', 1, 1],
      )
      .chain(([word, least, most]) => args(least, most).map((values) => call(word, values)));
    const library = fc
      .constantFrom(...catalogue)
      .chain(({ id, arguments: taken, example }) =>
        fc
          .tuple(
            ...taken
              .slice(0, example.given.length)
              .map((_, i) =>
                fc.oneof(
                  { weight: 5, arbitrary: fc.constant(String(example.given[i])) },
                  { weight: 4, arbitrary: name },
                  { weight: 1, arbitrary: inner },
                ),
              ),
          )
          .map((values) => call(id, values)),
      );
    return {
      part: fc.oneof(
        { maxDepth: 4, withCrossShrink: true },
        { weight: 4, arbitrary: name },
        { weight: 2, arbitrary: literal },
        {
          weight: 5,
          arbitrary: fc
            .tuple(inner, fc.constantFrom(...SIGNS), inner)
            .map(([left, sign, right]) => `(${left} ${sign} ${right})`),
        },
        { weight: 1, arbitrary: inner.map((value) => `-${value}`) },
        { weight: 1, arbitrary: inner.map((value) => `(${value})%`) },
        { weight: 1, arbitrary: inner.map((value) => `+${value}`) },
        { weight: 5, arbitrary: usual },
        { weight: 1, arbitrary: standard },
        { weight: 2, arbitrary: library },
      ),
    };
  });
  return part.map((text) => `=${text}`);
}
