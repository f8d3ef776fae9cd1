import { OPTIONS } from '../../engine-options.ts';
import { toNumber, toText } from '../coerce.ts';
import { compared, HOLDS } from '../compare.ts';
import type { Rule } from '../rule.ts';
import { DIVISION, isFault, type Scalar } from '../scalar.ts';

const EPSILON = OPTIONS.precisionEpsilon;

/** Sums and differences that are nothing beside their left part are 0. */
export const snapped = (result: number, left: number): number =>
  Math.abs(result) < EPSILON * Math.abs(left) ? 0 : result;

const binary = (run: (left: number, right: number) => Scalar): Rule => ({
  least: 2,
  most: 2,
  kind: 'number',
  run: ([first = null, second = null]) => {
    // An error on the left, then one on the right, comes before a text that is no number.
    if (isFault(first)) return first;
    if (isFault(second)) return second;
    const left = toNumber(first);
    if (isFault(left)) return left;
    const right = toNumber(second);
    return isFault(right) ? right : run(left, right);
  },
});

const unary = (run: (value: number) => number): Rule => ({
  least: 1,
  most: 1,
  kind: 'number',
  run: ([given = null]) => {
    const value = toNumber(given);
    return isFault(value) ? value : run(value);
  },
});

const comparison = (sign: string): Rule => ({
  least: 2,
  most: 2,
  kind: 'boolean',
  run: ([left = null, right = null]) => compared(sign, left, right),
});

const joined: Rule = {
  least: 2,
  most: 2,
  kind: 'text',
  run: ([first = null, second = null]) => {
    const left = toText(first);
    if (isFault(left)) return left;
    const right = toText(second);
    return isFault(right) ? right : left + right;
  },
};

/** The signs of a formula; `negate` and `percent` are the signs that stand before or after one value. */
export const arithmetic: Readonly<Record<string, Rule>> = {
  '+': binary((left, right) => snapped(left + right, left)),
  '-': binary((left, right) => snapped(left - right, left)),
  '*': binary((left, right) => left * right),
  '/': binary((left, right) => (right === 0 ? DIVISION : left / right)),
  '^': binary((left, right) => left ** right),
  '&': joined,
  negate: unary((value) => -value),
  percent: unary((value) => value / 100),
  ...Object.fromEntries(Object.keys(HOLDS).map((sign) => [sign, comparison(sign)])),
};
