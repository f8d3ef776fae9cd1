import type { Found } from './found.ts';
import { type Fraction, isWhole } from './fraction.ts';
import { readMagnitude } from './read-magnitude.ts';
import { INCH, readUnit } from './read-unit.ts';
import { Refusal } from './refusal.ts';
import type { Token } from './token.ts';

export const INCHES_IN_A_FOOT = 12n;

/** The inches after feet: a number under 12 that may, but need not, say that it is inches. */
export const readInchesAfter = (
  feet: Fraction,
  tokens: readonly Token[],
  start: number,
): Found<Fraction> | Refusal | undefined => {
  const hyphen = tokens[start];
  const hyphened = hyphen?.kind === 'hyphen' && !hyphen.spaced && tokens[start + 1]?.spaced === false;
  const at = hyphened ? start + 1 : start;
  if (tokens[at]?.kind !== 'number' && tokens[at]?.kind !== 'part') return undefined;
  const inches = readMagnitude(tokens, at);
  if (inches instanceof Refusal) return inches;
  const unit = readUnit(tokens[inches.next]);
  if (unit instanceof Refusal) return unit;
  if (unit !== undefined && unit !== INCH) return new Refusal(`after feet come inches, not ${unit.symbol}`);
  if (!isWhole(feet)) return new Refusal('before inches the feet are a whole number');
  if (inches.value.over >= INCHES_IN_A_FOOT * inches.value.under) {
    return new Refusal('after feet the inches stay under 12');
  }
  return { value: inches.value, next: unit === undefined ? inches.next : inches.next + 1 };
};
