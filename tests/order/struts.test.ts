import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../src/calc/answer.ts';
import { cutFromTubes } from '../../src/calc/cutting/cut.ts';
import { type StrutNest, whyNotNested } from '../../src/order/strut-nest.ts';
import { type StrutOrder, strutOrder } from '../../src/order/struts.ts';
import type { Inputs } from '../workbook/model-case.ts';
import { caseAsk } from './case-ask.ts';

const order = (changes: Inputs = {}): StrutOrder => {
  const it = strutOrder(caseAsk(changes));
  if (typeof it === 'string') throw new Error(it);
  return it;
};

const nest = (changes: Inputs = {}): StrutNest => {
  const it = order(changes).nest;
  if (it === undefined) throw new Error('The struts are not nested.');
  return it;
};

const why = (changes: Inputs): string[] => {
  const it = order(changes);
  return whyNotNested(it.pieces, it.stock, (mm) => `${mm.toFixed(1)} mm`);
};

describe('struts nested on the tubes supplied', () => {
  it('both come from one tube in the case to start from, and one tube stays whole', () => {
    const it = nest();
    expect(it.tubes.map((tube) => tube.pieces)).toEqual([['Port strut', 'Starboard strut']]);
    // 1000 − 205.1823 − 2 − 205.1823 − 2.
    expect(it.tubes[0]?.left).toBeCloseTo(585.6354, 3);
    expect(it.spare).toBe(1);
    expect(order().pieces.map((piece) => piece.trial - piece.cut)).toEqual([20, 20]);
    expect(why({})).toEqual([]);
  });

  it('need two where they do not fit together, each under its own name', () => {
    const it = nest({ strut_supply_length: 412.3, strut_supply_count: 1, port_foot_y: -180 });
    expect(it.tubes.flatMap((tube) => tube.pieces).sort()).toEqual(['Port strut', 'Starboard strut']);
    expect(it.tubes).toHaveLength(2);
    expect(it.spare).toBe(-1);
  });

  it('count the tubes when struts are cut long first, and when trial tubes come from them too', () => {
    // By hand, struts 205.18, trial tubes 225.18, saw 2: 2 · 225.18 + 2 = 452.4; all four and three cuts 866.7.
    const tubes = (supply: number) => {
      const it = nest({ strut_supply_length: supply });
      return [it.tubes.length, it.longTubes, it.withTrial];
    };
    expect(tubes(867)).toEqual([1, 1, 1]);
    expect(tubes(866)).toEqual([1, 1, 2]);
    expect(tubes(453)).toEqual([1, 1, 2]);
    // 205.18 + 225.18 + 2 = 432.4 still goes twice into 433.
    expect(tubes(433)).toEqual([1, 2, 2]);
    expect(tubes(432)).toEqual([1, 2, 3]);
    expect(tubes(412)).toEqual([2, 2, 4]);
    expect(tubes(220)).toEqual([2, undefined, undefined]);
  });

  it('say of each strut why it cannot be cut', () => {
    expect(order({ strut_supply_length: 150 }).nest).toBeUndefined();
    expect(why({ strut_supply_length: 150 })).toEqual([
      'No tube gives the port strut, 205.2 mm, or the starboard strut, 205.2 mm: those supplied are 150.0 mm long. Order longer tube of the same size, or move the feet nearer to the clamp.',
    ]);
    expect(why({ strut_end_allowance: 200 })).toEqual([
      expect.stringMatching(/^Nothing is left to cut for the port strut, -144\.8 mm, and the starboard/),
    ]);
    expect(why({ strut_count: 1, strut_supply_length: 150 })[0]).toContain('move its foot nearer');
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
