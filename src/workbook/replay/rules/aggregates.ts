import { toNumber } from '../coerce.ts';
import type { Rule } from '../rule.ts';
import { DIVISION, isFault, type Scalar } from '../scalar.ts';
import { snapped } from './arithmetic.ts';

const MANY = Number.POSITIVE_INFINITY;

const fold = (run: (numbers: readonly number[]) => Scalar): Rule => ({
  least: 1,
  most: MANY,
  kind: 'number',
  run: (args) => {
    const numbers: number[] = [];
    for (const given of args) {
      const value = toNumber(given);
      if (isFault(value)) return value;
      numbers.push(value);
    }
    return run(numbers);
  },
});

/** The engine gives 0 where the least or the greatest is no finite number. */
const zeroForInfinite = (value: number): number => (Number.isFinite(value) ? value : 0);

/** Functions over any count of arguments, each a single value: formulas here hold no ranges. */
export const aggregates: Readonly<Record<string, Rule>> = {
  SUM: fold((numbers) => numbers.reduce((sum, it) => snapped(sum + it, sum), 0)),
  MIN: fold((numbers) => zeroForInfinite(numbers.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY))),
  MAX: fold((numbers) => zeroForInfinite(numbers.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY))),
  AVERAGE: fold((numbers) =>
    numbers.length === 0 ? DIVISION : numbers.reduce((sum, it) => sum + it, 0) / numbers.length,
  ),
  COUNT: {
    least: 1,
    most: MANY,
    kind: 'number',
    run: (args) => args.filter((given) => !isFault(toNumber(given))).length,
  },
};
