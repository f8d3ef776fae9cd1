import type { Rule } from './rule.ts';
import { aggregates } from './rules/aggregates.ts';
import { arithmetic } from './rules/arithmetic.ts';
import { choice } from './rules/choice.ts';
import { functions } from './rules/functions.ts';
import { library } from './rules/library.ts';
import { tables } from './rules/tables.ts';
import { type Scalar, settled } from './scalar.ts';

const all: ReadonlyMap<string, Rule> = new Map(
  Object.entries({ ...arithmetic, ...choice, ...aggregates, ...functions, ...library, ...tables }),
);

/** How an operation behaves; undefined for one that cannot be replayed. */
export const ruleNamed = (op: string): Rule | undefined => all.get(op);

/** An operation on any values. Throws when it is not one of the rules: `lower` lets none through. */
export function applied(op: string, args: readonly Scalar[]): Scalar {
  const rule = all.get(op);
  if (rule === undefined) throw new Error(`${op} cannot be replayed.`);
  return settled(rule.run(args));
}
