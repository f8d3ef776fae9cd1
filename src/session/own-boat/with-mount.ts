import { inputNamed } from '../../plan/book.ts';
import { standIn } from '../../plan/new-plan.ts';
import { type Plan, readingOf } from '../../plan/plan.ts';
import { MADE, PLACED_BY, type Readings } from '../../studies/first-mount/ask.ts';
import { plainMount } from '../../studies/first-mount/plain-mount.ts';
import { mountAsk } from '../studies/mount-ask.ts';

/** The plan with a mount's choices in it, in the order of `MADE`. */
export function withMount(plan: Plan, values: readonly number[]): Plan {
  const inputs = new Map(plan.inputs);
  for (const [n, name] of MADE.entries()) {
    const cell = inputNamed(name);
    const value = values[n];
    if (cell !== undefined && value !== undefined) inputs.set(name, { ...standIn(cell), value });
  }
  return { ...plan, inputs };
}

/** A mount by the rule alone, for a plan whose limits cannot be worked out; what follows a formula counts as its stand-in. */
export function ruledMount(plan: Plan): readonly number[] {
  const readings = Object.fromEntries(
    PLACED_BY.map((name) => {
      const value = readingOf(plan, name)?.value ?? inputNamed(name)?.value;
      return [name, Number(value)];
    }),
  ) as Record<keyof Readings, number>;
  return plainMount(readings, mountAsk(plan, null));
}
