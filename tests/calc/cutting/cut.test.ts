import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Coefficients, type Constraint, solve } from 'yalps';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { type CutPlan, cutFromTubes, offcut, tubesNeeded } from '../../../src/calc/cutting/cut.ts';

const planOf = (pieces: readonly number[], supply: number, kerf: number): CutPlan => {
  const plan = cutFromTubes(pieces, supply, kerf);
  if (plan instanceof NoAnswer) throw new Error(plan.why);
  return plan;
};

const sum = (lengths: readonly number[]): number => lengths.reduce((all, it) => all + it, 0);

/**
 * The same question as a mixed-integer program, for yalps 0.6.4: piece i lies in tube j or not. A kerf after each piece
 * but the one that ends the tube means that pieces of w + kerf fill tubes of supply + kerf, exactly.
 */
function program(
  pieces: readonly number[],
  supply: number,
  kerf: number,
  tubes: number,
  goal: 'fewest' | 'rest',
) {
  const constraints = new Map<string, Constraint>();
  const variables = new Map<string, Coefficients>();
  pieces.forEach((_, i) => {
    constraints.set(`piece ${i}`, { equal: 1 });
  });
  for (let j = 0; j < tubes; j++) {
    // The fewest tubes: a tube that is cut at all counts. The longest rest: as little as can be from the first tube.
    constraints.set(`tube ${j}`, { max: goal === 'fewest' ? 0 : supply + kerf });
    if (goal === 'fewest') variables.set(`use ${j}`, { [`tube ${j}`]: -(supply + kerf), total: 1 });
    pieces.forEach((piece, i) => {
      const cost = goal === 'rest' && j === 0 ? piece + kerf : 0;
      variables.set(`${i} in ${j}`, { [`piece ${i}`]: 1, [`tube ${j}`]: piece + kerf, total: cost });
    });
  }
  const solution = solve({
    direction: 'minimize',
    objective: 'total',
    constraints,
    variables,
    binaries: true,
  });
  if (solution.status !== 'optimal') throw new Error(`The program is ${solution.status}.`);
  return solution.result;
}

const instance = fc
  .record({
    supply: fc.integer({ min: 60, max: 120 }),
    kerf: fc.integer({ min: 0, max: 4 }),
    shares: fc.array(fc.integer({ min: 5, max: 100 }), { minLength: 1, maxLength: 5 }),
  })
  .map(({ supply, kerf, shares }) => ({
    supply,
    kerf,
    pieces: shares.map((share) => Math.max(1, Math.floor((supply * share) / 100))),
  }));

describe('cutting struts from supplied tubes', { timeout: 30_000 }, () => {
  it('needs as few tubes as an exact solver, and leaves as long a piece', () => {
    fc.assert(
      fc.property(instance, ({ supply, kerf, pieces }) => {
        const plan = planOf(pieces, supply, kerf);
        const fewest = program(pieces, supply, kerf, pieces.length, 'fewest');
        expect(plan.tubes.length).toBe(Math.round(fewest));
        const taken = program(pieces, supply, kerf, plan.tubes.length, 'rest');
        expect(Math.max(...plan.left)).toBeCloseTo(Math.max(0, supply - taken), 6);
      }),
      { numRuns: 150 },
    );
  });

  it('cuts every piece once, within each tube, and counts what is left with its kerf', () => {
    fc.assert(
      fc.property(instance, ({ supply, kerf, pieces }) => {
        const { tubes, left } = planOf(pieces, supply, kerf);
        const order = (lengths: readonly number[]) => [...lengths].sort((a, b) => a - b);
        expect(order(tubes.flat())).toEqual(order(pieces));
        tubes.forEach((tube, j) => {
          const rest = supply - sum(tube) - kerf * (tube.length - 1);
          expect(rest).toBeGreaterThanOrEqual(0);
          expect(left[j]).toBe(rest <= kerf ? 0 : rest - kerf);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('packs 6 5 5 4 3 3 2 2 into three of 10, with nothing left', () => {
    // A small published form of bin packing: the sum, 30, fills three tubes, so fewer cannot be.
    const { tubes, left } = planOf([6, 5, 5, 4, 3, 3, 2, 2], 10, 0);
    expect(tubes).toHaveLength(3);
    expect(left).toEqual([0, 0, 0]);
    expect(program([6, 5, 5, 4, 3, 3, 2, 2], 10, 0, 4, 'fewest')).toBe(3);
  });

  it('counts the tubes of two pieces as their plan does', () => {
    const length = fc.double({ min: 1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(length, length, fc.double({ min: 0, max: 5, noNaN: true }), (first, second, kerf) => {
        const plan = cutFromTubes([first, second], 800, kerf);
        const count = tubesNeeded(800, kerf, first, second);
        expect(count).toEqual(plan instanceof NoAnswer ? plan : plan.tubes.length);
      }),
    );
  });

  it('lets a piece end the tube within one kerf, and not a hair more', () => {
    expect(tubesNeeded(800, 2, 399, 399)).toBe(1);
    expect(offcut(800, 2, 399, 399)).toBe(0);
    expect(tubesNeeded(800, 2, 399, 399.001)).toBe(2);
    expect(offcut(800, 2, 399, 397)).toBe(0);
    expect(offcut(800, 2, 399, 396)).toBeCloseTo(1, 9);
    expect(tubesNeeded(800, 2, 800)).toBe(1);
    expect(offcut(800, 2, 800)).toBe(0);
    expect(offcut(800, 2, 500, 700)).toBe(298);
  });

  it('has no answer for a piece that is not there or longer than the tubes, and says which', () => {
    expect((tubesNeeded(800, 2, 300, 0) as NoAnswer).why).toContain(' 0.0 mm long');
    expect((tubesNeeded(800, 2, 300, -20) as NoAnswer).why).toContain(' −20.0 mm long');
    expect((offcut(800, 2, 800.5) as NoAnswer).why).toContain('longer than the tubes supplied, 800 mm');
  });
});
