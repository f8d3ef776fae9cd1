import fc from 'fast-check';
import { differences } from '../workbook/differences.ts';
import { randomInputs } from '../workbook/random-inputs.ts';
import type { SoakLine } from './part.ts';

const PLANS = 2000;

/** The workbook against the second model on random plans, states included, drawn anew each time. */
export function* soakSecondModel(): Iterable<SoakLine> {
  const { failed, seed, counterexamplePath, errorInstance } = fc.check(
    fc.property(randomInputs, (drawn) => {
      const found = differences(drawn);
      if (found.length > 0) throw new Error(found.join('; '));
    }),
    { numRuns: PLANS, endOnFailure: true },
  );
  const difference = failed
    ? `differs (seed ${seed}, path ${counterexamplePath}): ${errorInstance instanceof Error ? errorInstance.message : ''}`
    : 'no difference';
  yield { name: 'workbook as the second model', says: `${PLANS} plans: ${difference}`, ok: !failed };
}
