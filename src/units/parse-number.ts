import { type Ask, type Entry, type RefusedEntry, read, refused } from './entry.ts';
import { examplesOf, foreignUnit, nounOf } from './entry-sentences.ts';
import { findUnits } from './find-unit.ts';
import { divide, type Fraction, isWhole, multiply } from './fraction.ts';
import { numberOfFraction } from './number-of-fraction.ts';
import { quoted } from './quoted.ts';
import { type Quantity, readQuantity } from './read-quantity.ts';
import { Refusal } from './refusal.ts';
import type { Unit } from './unit-table.ts';

const SMALLEST = 1e-300;

const inUnit = (amount: Fraction, from: Unit, to: Unit): Fraction =>
  divide(multiply(amount, from.size), to.size);

const unitNamed = (symbol: string): Unit | undefined => {
  const units = findUnits(symbol);
  return units.length === 1 ? units[0] : undefined;
};

/** The amount in the base unit, with the symbol of the unit it came in. */
const inBase = (quantity: Quantity, ask: Ask, base: Unit | undefined): [Fraction, string] | Refusal => {
  const { amount, unit, symbol } = quantity;
  if (unit === undefined) {
    const bare = ask.kind === 'length' && base?.dimension === 'length' ? unitNamed(ask.bare) : base;
    return base === undefined || bare === undefined
      ? [amount, ask.unit]
      : [inUnit(amount, bare, base), bare.symbol];
  }
  const foreign = unit.dimension !== base?.dimension;
  const sharesCount = ask.kind === 'whole' && unit.dimension === 'share' && unit !== base;
  if (base === undefined || foreign || sharesCount) return new Refusal(foreignUnit(unit));
  return [inUnit(amount, unit, base), symbol ?? unit.symbol];
};

const sizeRefusal = (amount: Fraction, value: number): Refusal | undefined => {
  if (!Number.isFinite(value)) return new Refusal('it is larger than can be counted with here');
  if (amount.over !== 0n && Math.abs(value) < SMALLEST) {
    return new Refusal('it is smaller than can be counted with here; write 0');
  }
  return undefined;
};

/** Reads a length, a whole number or any other number, with or without its unit. */
export const parseNumber = (typed: string, ask: Ask): Entry => {
  const base = unitNamed(ask.unit);
  const whole = ask.kind === 'whole';
  const noun = whole ? 'a whole number' : nounOf(base);
  const examples = whole ? 'a whole number such as 3' : examplesOf(base, ask.unit);
  const refuse = (cause: string): RefusedEntry =>
    refused(`${quoted(typed)} is not ${noun}: ${cause}. For ${ask.name}, write ${examples}.`);

  const quantity = readQuantity(typed);
  if (quantity instanceof Refusal) return refuse(quantity.cause);
  const converted = inBase(quantity, ask, base);
  if (converted instanceof Refusal) return refuse(converted.cause);
  const [amount, unit] = converted;
  const value = numberOfFraction(amount);
  const size = sizeRefusal(amount, value);
  if (size !== undefined) return refuse(size.cause);
  if (whole && !isWhole(amount)) return refuse('it lies between two');
  if (whole && !Number.isSafeInteger(value)) return refuse('it is larger than can be counted with here');
  return read(value, unit, typed);
};
