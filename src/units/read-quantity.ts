import { add, type Fraction, fraction, multiply, negate } from './fraction.ts';
import { quoted } from './quoted.ts';
import { INCHES_IN_A_FOOT, readInchesAfter } from './read-inches-after.ts';
import { readMagnitude } from './read-magnitude.ts';
import { FOOT, INCH, readUnit } from './read-unit.ts';
import { Refusal } from './refusal.ts';
import { type Token, tokensOf } from './token.ts';
import type { Unit } from './unit-table.ts';

/** A number with the unit it carries; `unit` is undefined for a bare number. */
export type Quantity = {
  readonly amount: Fraction;
  readonly unit: Unit | undefined;
  /** The unit's symbol, or `ft in` for feet and inches together. */
  readonly symbol: string | undefined;
};

const written = (tokens: readonly Token[]): string =>
  tokens.map(({ text, spaced }, at) => (spaced && at > 0 ? ` ${text}` : text)).join('');

const refuseRest = (tokens: readonly Token[], at: number): Refusal => {
  const token = tokens[at];
  if (token?.kind === 'hyphen' || token?.kind === 'minus' || token?.kind === 'plus') {
    return new Refusal('a sign stands only in front; a sum begins with =');
  }
  const unit = readUnit(token);
  if (unit instanceof Refusal) return unit;
  return new Refusal(
    `${quoted(written(tokens.slice(at)))} is left over behind ${quoted(written(tokens.slice(0, at)))}`,
  );
};

const readUnsigned = (tokens: readonly Token[], start: number): Quantity | Refusal => {
  const stranger = tokens.find(({ kind }) => kind === 'other');
  if (stranger !== undefined) return new Refusal(`${quoted(stranger.text)} has no place in it`);
  const magnitude = readMagnitude(tokens, start);
  if (magnitude instanceof Refusal) return magnitude;
  const unit = readUnit(tokens[magnitude.next]);
  if (unit instanceof Refusal) return unit;

  const next = unit === undefined ? magnitude.next : magnitude.next + 1;
  const inches =
    unit !== undefined && unit === FOOT ? readInchesAfter(magnitude.value, tokens, next) : undefined;
  if (inches instanceof Refusal) return inches;
  const end = inches?.next ?? next;
  if (end < tokens.length) return refuseRest(tokens, end);
  if (inches === undefined) return { amount: magnitude.value, unit, symbol: unit?.symbol };
  const total = add(multiply(magnitude.value, fraction(INCHES_IN_A_FOOT, 1n)), inches.value);
  return { amount: total, unit: INCH, symbol: 'ft in' };
};

/**
 * Reads a number as a person writes it off a tape, exactly, with the unit it may carry. A sign in front holds for
 * all of it: -2 3/8 is -(2 + 3/8). Every refusal is a clause that tells the cause.
 */
export const readQuantity = (text: string): Quantity | Refusal => {
  const tokens = tokensOf(text);
  const sign = tokens[0]?.kind;
  const signed = sign === 'hyphen' || sign === 'minus' || sign === 'plus';
  const quantity = readUnsigned(tokens, signed ? 1 : 0);
  if (quantity instanceof Refusal || !signed || sign === 'plus') return quantity;
  return { ...quantity, amount: negate(quantity.amount) };
};
