import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../src/calc/answer.ts';
import { cutFromTubes } from '../../src/calc/cutting/cut.ts';
import { type StrutOrder, strutOrder } from '../../src/order/struts.ts';
import type { Inputs } from '../workbook/model-case.ts';
import { caseAsk } from './case-ask.ts';

const order = (changes: Inputs = {}): StrutOrder => {
  const it = strutOrder(caseAsk(changes));
  if (typeof it === 'string') throw new Error(it);
  return it;
};

describe('struts nested on the tubes supplied', () => {
  it('both come from one tube in the case to start from, and one tube stays whole', () => {
    const it = order();
    expect(it.tubes.map((tube) => tube.pieces)).toEqual([['Port strut', 'Starboard strut']]);
    // 800 − 205.1823 − 2 − 205.1823 − 2.
    expect(it.tubes[0]?.left).toBeCloseTo(385.6354, 3);
    expect(it.spare).toBe(1);
    expect(it.pieces.map((piece) => piece.trial - piece.cut)).toEqual([20, 20]);
  });

  it('need two where they do not fit together, each under its own name', () => {
    const it = order({ strut_supply_length: 412.3, strut_supply_count: 1, port_foot_y: -180 });
    expect(it.tubes.flatMap((tube) => tube.pieces).sort()).toEqual(['Port strut', 'Starboard strut']);
    expect(it.tubes).toHaveLength(2);
    expect(it.spare).toBe(-1);
  });

  it('say why a strut cannot be cut', () => {
    expect(strutOrder(caseAsk({ strut_supply_length: 150 }))).toMatch(
      /longer than the tubes supplied, 150 mm/,
    );
    expect(strutOrder(caseAsk({ strut_end_allowance: 200 }))).toMatch(/nothing to cut/);
  });

  it('rest on a solver that finds known optima', () => {
    // Capacity 10, items 6 5 5 4 3 3 2 2: 3 bins, by hand 6+4, 5+5, 3+3+2+2 (sum 30).
    const small = cutFromTubes([6, 5, 5, 4, 3, 3, 2, 2], 10, 0);
    expect(small instanceof NoAnswer ? 0 : small.tubes.length).toBe(3);
    // A kerf k is the same problem with k added to every piece and to the tube.
    const sawn = cutFromTubes([5.5, 4.5, 4.5, 3.5, 2.5, 2.5, 1.5, 1.5], 9.5, 0.5);
    expect(sawn instanceof NoAnswer ? 0 : sawn.tubes.length).toBe(3);
  });
});
