import { textRefusal, WITHIN_TEXT } from '../../longest-text.ts';
import { toBoolean } from '../coerce.ts';
import type { Rule } from '../rule.ts';
import { type Fault, isFault, noAnswer, type Scalar } from '../scalar.ts';

/** All arguments as yes or no, or the first that is an error or no yes or no. */
function allFlags(args: readonly Scalar[]): boolean[] | Fault {
  const flags: boolean[] = [];
  for (const given of args) {
    const flag = toBoolean(given);
    if (isFault(flag)) return flag;
    flags.push(flag);
  }
  return flags;
}

const ofFlags = (least: number, most: number, run: (flags: readonly boolean[]) => boolean): Rule => ({
  least,
  most,
  kind: 'boolean',
  run: (args) => {
    const flags = allFlags(args);
    return Array.isArray(flags) ? run(flags) : flags;
  },
});

const MANY = Number.POSITIVE_INFINITY;

/** Functions that choose, and `same`, a formula that is only a name. The engine works out every argument; an error in the one not taken is ignored. */
export const choice: Readonly<Record<string, Rule>> = {
  [WITHIN_TEXT]: {
    least: 1,
    most: 1,
    kind: 'of its arguments',
    run: ([value = null]) => {
      const why = typeof value === 'string' ? textRefusal(value) : undefined;
      return why === undefined ? value : noAnswer(why);
    },
  },
  same: { least: 1, most: 1, kind: 'of its arguments', run: ([value = null]) => value },
  IF: {
    least: 2,
    most: 3,
    kind: 'of its arguments',
    run: ([condition = null, then = null, otherwise = false]) => {
      const taken = toBoolean(condition);
      return isFault(taken) ? taken : taken ? then : otherwise;
    },
  },
  IFERROR: {
    least: 2,
    most: 2,
    kind: 'of its arguments',
    run: ([value = null, instead = null]) => (isFault(value) ? instead : value),
  },
  AND: ofFlags(1, MANY, (flags) => flags.every((flag) => flag)),
  OR: ofFlags(1, MANY, (flags) => flags.some((flag) => flag)),
  NOT: ofFlags(1, 1, ([flag]) => !flag),
  TRUE: ofFlags(0, 0, () => true),
  FALSE: ofFlags(0, 0, () => false),
};
