import fc from 'fast-check';
import { CELLS, cases, compare } from '../workbook/replay/random-plans.ts';
import type { SoakLine } from './part.ts';

const LEAST_CELLS = 50_000;

/** Replay against engine on random plans with random formulas of the owner, drawn anew each time. */
export function* soakReplay(): Iterable<SoakLine> {
  let cells = 0;
  let errors = 0;
  const { failed, seed, counterexamplePath, errorInstance } = fc.check(
    fc.property(cases, (drawn) => {
      const compared = compare(drawn);
      cells += compared.cells;
      errors += compared.errors;
    }),
    { numRuns: Math.ceil(LEAST_CELLS / CELLS) },
  );
  const difference = failed
    ? `differs (seed ${seed}, path ${counterexamplePath}): ${errorInstance instanceof Error ? errorInstance.message : ''}`
    : 'no difference';
  yield {
    name: 'replay as the engine',
    says: `${cells} cells, ${errors} of them errors: ${difference}`,
    ok: !failed && cells >= LEAST_CELLS,
  };
}
