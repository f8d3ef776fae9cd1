import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layout } from '../../../src/plan/file/layout.ts';

it('has a row to a line, and breaks only what does not fit in 110 characters', () => {
  const long = 'x'.repeat(100);
  expect(
    layout({ a: 1, b: [], c: { d: [1, 2] }, rows: [{ name: 'a', note: long }, { name: long }], e: null }),
  ).toBe(
    [
      '{',
      '  "a": 1,',
      '  "b": [],',
      '  "c": { "d": [1, 2] },',
      '  "rows": [',
      '    {',
      '      "name": "a",',
      `      "note": "${long}"`,
      '    },',
      '    {',
      `      "name": "${long}"`,
      '    }',
      '  ],',
      '  "e": null',
      '}',
      '',
    ].join('\n'),
  );
});

it('turns exactly at the widest line', () => {
  const text = (length: number) => layout({ a: { b: 'x'.repeat(length) } });
  const widest = (it: string) => Math.max(...it.split('\n').map((line) => line.length));
  // Beside the text itself: the indent of 2, `"a": { "b": "` and `" }`, 18 in all, and room for a comma.
  expect(widest(text(91))).toBe(109);
  expect(text(91)).toContain('{ "b": ');
  expect(text(92)).not.toContain('{ "b": ');
});

it('says the same as JSON.stringify', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (document) => {
      expect(JSON.parse(layout(document))).toEqual(JSON.parse(JSON.stringify(document)));
    }),
  );
});
