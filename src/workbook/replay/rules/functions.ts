import { remainder } from '../../remainder.ts';
import { toNumber } from '../coerce.ts';
import type { Rule } from '../rule.ts';
import { DIVISION, isFault, type Scalar } from '../scalar.ts';

/** A function of numbers; arguments left out after `least` take `filled`. */
const ofNumbers = (
  least: number,
  most: number,
  run: (...values: [number, number]) => Scalar,
  filled = 0,
): Rule => ({
  least,
  most,
  kind: 'number',
  run: (args) => {
    const values: [number, number] = [filled, filled];
    for (let i = 0; i < args.length; i++) {
      const value = toNumber(args[i] ?? null);
      if (isFault(value)) return value;
      values[i] = value;
    }
    return run(...values);
  },
});

const one = (run: (value: number) => Scalar): Rule => ofNumbers(1, 1, run);
const two = (run: (first: number, second: number) => Scalar): Rule => ofNumbers(2, 2, run);

/** Rounds by a whole-number rule at so many places, alike on both sides of 0. */
export const rounding =
  (whole: (value: number) => number) =>
  (value: number, places: number): number => {
    const scale = 10 ** places;
    return value < 0 ? -whole(-value * scale) / scale : whole(value * scale) / scale;
  };

/** The engine cuts towards 0. */
export const integer = (value: number): number => (value < 0 ? -Math.floor(-value) : Math.floor(value));

export const sign = (value: number): number => (value > 0 ? 1 : value < 0 ? -1 : 0);

export const direction = (x: number, y: number): Scalar => (x === 0 && y === 0 ? DIVISION : Math.atan2(y, x));

/** The engine's π has fourteen decimals. */
const PI = Number.parseFloat(Math.PI.toFixed(14));

/** Functions of one or two numbers with no way of failing but a result that is not finite. */
export const plainFunctions: Readonly<Record<string, (first: number, second: number) => number>> = {
  ABS: Math.abs,
  SIGN: sign,
  INT: integer,
  ROUND: rounding(Math.round),
  ROUNDUP: rounding(Math.ceil),
  ROUNDDOWN: rounding(Math.floor),
  SQRT: Math.sqrt,
  EXP: Math.exp,
  LN: Math.log,
  LOG10: Math.log10,
  POWER: Math.pow,
  SIN: Math.sin,
  COS: Math.cos,
  TAN: Math.tan,
  ASIN: Math.asin,
  ACOS: Math.acos,
  ATAN: Math.atan,
  DEGREES: (value) => value * (180 / Math.PI),
  RADIANS: (value) => value * (Math.PI / 180),
};

const PLACED = new Set(['ROUND', 'ROUNDUP', 'ROUNDDOWN']);

const ruleOf = (name: string, run: (first: number, second: number) => number): Rule => {
  if (PLACED.has(name)) return ofNumbers(1, 2, run);
  return name === 'POWER' ? two(run) : one((value) => run(value, 0));
};

/** The functions of numbers in the closed list. */
export const functions: Readonly<Record<string, Rule>> = {
  ...Object.fromEntries(Object.entries(plainFunctions).map(([name, run]) => [name, ruleOf(name, run)])),
  MOD: two((dividend, divisor) => (divisor === 0 ? DIVISION : remainder(dividend, divisor))),
  ATAN2: two(direction),
  PI: { least: 0, most: 0, kind: 'number', run: () => PI },
};
