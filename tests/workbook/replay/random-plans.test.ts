import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CELLS, cases, compare } from './random-plans.ts';

/** Cells compared here; the long run compares ten times as many, drawn anew each time. */
const LEAST_CELLS = 5000;

describe('random plans with random formulas of the owner', () => {
  it(`give the same in the replay as in the engine, ${LEAST_CELLS} cells and more`, {
    timeout: 120_000,
  }, () => {
    let cells = 0;
    let errors = 0;
    fc.assert(
      fc.property(cases, (drawn) => {
        const compared = compare(drawn);
        cells += compared.cells;
        errors += compared.errors;
      }),
      { numRuns: Math.ceil(LEAST_CELLS / CELLS), seed: 20 },
    );
    expect(cells).toBeGreaterThanOrEqual(LEAST_CELLS);
    // Neither all right nor all wrong: both roads are walked.
    expect(errors).toBeGreaterThan(cells / 50);
    expect(errors).toBeLessThan(cells / 2);
  });
});
