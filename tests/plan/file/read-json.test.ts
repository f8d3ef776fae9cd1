import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJson } from '../../../src/plan/file/read-json.ts';

const CAPS = { text: 100, rows: 50 };
const read = (text: string) => readJson(text, CAPS);

describe('reading JSON', () => {
  it('reads what JSON.parse reads, to the same value', () => {
    fc.assert(
      fc.property(
        fc.jsonValue({ maxDepth: 5, noUnicodeString: false }),
        fc.constantFrom(undefined, 2),
        (value, space) => {
          const text = JSON.stringify(value, null, space);
          const mine = readJson(text, { text: 1e6, rows: 1e6 });
          // A key that reaches a prototype is refused; JSON.parse would keep it.
          fc.pre(mine.ok || !mine.why.includes('not allowed as a key'));
          expect(mine).toEqual({ ok: true, value: JSON.parse(text) });
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('refuses what JSON.parse refuses, and nothing else', () => {
    const signs = fc.constantFrom(...'{}[]",:0123.eE+-\\u tfnrueals\n', 'true', 'null', '"a"', '1e5');
    fc.assert(
      fc.property(fc.array(signs, { maxLength: 12 }), (parts) => {
        const text = parts.join('');
        let parsed: { value: unknown } | undefined;
        try {
          parsed = { value: JSON.parse(text) };
        } catch {
          parsed = undefined;
        }
        const mine = read(text);
        const infinite = !mine.ok && mine.why === 'a number is too large';
        fc.pre(!infinite && (mine.ok || !mine.why.includes('twice')));
        expect(mine.ok ? { value: mine.value } : undefined).toEqual(parsed);
      }),
      { numRuns: 20_000 },
    );
  });

  it.each([
    ['{"a":1,\n"a":2}', 2, 'the key “a” stands twice'],
    ['{"a":1,\n"\\u0061":2}', 2, 'the key “a” stands twice'],
    ['{"__proto__":{"x":1}}', 1, '“__proto__” is not allowed as a key'],
    ['{"\\u005f_proto__":1}', 1, '“__proto__” is not allowed as a key'],
    ['[1,\n2\n', 3, 'the text ends too early'],
    ['[1,\n\n2 3]', 3, '“]” is missing'],
    ['[1e400]', 1, 'a number is too large'],
    ['["a\\q"]', 1, 'a text holds a character or escape that JSON does not allow'],
    ['[1] [2]', 1, 'something stands after the end of the document'],
    ['[1,]', 1, 'a value is missing'],
  ])('says what is wrong and on which line: %j', (text, line, why) => {
    expect(read(text)).toMatchObject({ ok: false, line, why, tooLarge: false });
  });

  it('turns exactly at its caps', () => {
    const text = (length: number) => `["${'x'.repeat(length)}"]`;
    expect(read(text(100)).ok).toBe(true);
    expect(read(text(101))).toMatchObject({ ok: false, tooLarge: true });
    const escaped = (count: number) => `["${'\\u0041'.repeat(count)}"]`;
    expect(read(escaped(100)).ok).toBe(true);
    expect(read(escaped(101))).toMatchObject({ ok: false, tooLarge: true });
    const rows = (count: number) => `{"a":[${Array(count).fill('{}').join(',')}]}`;
    expect(read(rows(50)).ok).toBe(true);
    expect(read(rows(51))).toMatchObject({ ok: false, tooLarge: true });
    expect(read('['.repeat(12) + ']'.repeat(12)).ok).toBe(true);
    expect(read('['.repeat(1e6))).toMatchObject({ ok: false, tooLarge: true });
  });
});
