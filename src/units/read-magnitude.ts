import type { Found } from './found.ts';
import { add, type Fraction } from './fraction.ts';
import { quoted } from './quoted.ts';
import { readDecimal } from './read-decimal.ts';
import { isPlainWhole, readPart } from './read-part.ts';
import { Refusal } from './refusal.ts';
import type { Token } from './token.ts';

const looksGrouped = (whole: string, over: string): boolean =>
  /^[1-9]\d{0,2}$/.test(whole) && /^\d{3}$/.test(over);

const groupedBySpace = (tokens: readonly Token[], start: number): Refusal => {
  const groups = [tokens[start]?.text ?? ''];
  for (const { text } of tokens.slice(start + 1)) {
    if (!/^\d{3}$/.test(text)) break;
    groups.push(text);
  }
  const decimal = groups.length === 2 ? ` or ${Number(groups.join('.'))}` : '';
  return new Refusal(`thousands are written without a space; write ${groups.join('')}${decimal}`);
};

const noNumberAt = (tokens: readonly Token[], at: number): Refusal => {
  const stray = tokens[at];
  const some = tokens.some(({ kind, text }) => kind === 'part' || /\d/.test(text));
  return some && stray !== undefined
    ? new Refusal(`${quoted(stray.text)} stands where its number should begin`)
    : new Refusal('it holds no number');
};

/** A number, a fraction, or a whole number with a fraction after it: 4, 1,5, 3/8, 2 3/8, 2-3/8, 2⅜. */
export const readMagnitude = (tokens: readonly Token[], start: number): Found<Fraction> | Refusal => {
  const alone = readPart(tokens, start);
  if (alone !== undefined) return alone;
  const first = tokens[start];
  if (first?.kind !== 'number') return noNumberAt(tokens, start);
  const whole = readDecimal(first.text);
  if (whole instanceof Refusal) return whole;

  const second = tokens[start + 1];
  const hyphened = second?.kind === 'hyphen' && !second.spaced && tokens[start + 2]?.spaced === false;
  const at = hyphened ? start + 2 : start + 1;
  const part = readPart(tokens, at);
  if (part instanceof Refusal) return part;
  const over = tokens[at];
  if (part === undefined) {
    if (over?.kind !== 'number' || hyphened) return { value: whole, next: start + 1 };
    if (looksGrouped(first.text, over.text)) return groupedBySpace(tokens, start);
    return new Refusal(
      `it holds two numbers, ${quoted(first.text)} and ${quoted(over.text)}; after a whole number comes a fraction, as in 2 3/8`,
    );
  }
  if (!isPlainWhole(first.text)) return new Refusal('before a fraction stands a whole number, as in 2 3/8');
  if (over?.kind === 'number' && looksGrouped(first.text, over.text) && part.value.over >= part.value.under) {
    return groupedBySpace(tokens, start);
  }
  return { value: add(whole, part.value), next: part.next };
};
