import { describe, expect, it } from 'vitest';
import { limitsOn, worstOf } from '../../../src/views/grid/worst-limit.ts';
import type { Judgement, LimitAnswer } from '../../../src/workbook/judged.ts';

const limit = (name: string, state: LimitAnswer['verdict']['state'], ratio?: number): LimitAnswer => ({
  name,
  result: 'gap',
  value: 1,
  low: 0,
  high: undefined,
  near: 0,
  graded: true,
  verdict: { state, room: ratio, ratio },
  class: 'too close',
});

const judged = (...limits: LimitAnswer[]): Judgement => ({ limits, leastRoom: undefined, unanswered: 0 });

describe('the worst limit on a result', () => {
  it('is the one outside, before no answer, near, inside and one that does not apply', () => {
    const order = ['does not apply', 'inside', 'near', 'no answer', 'outside'] as const;
    for (let upTo = 1; upTo <= order.length; upTo++) {
      const limits = order.slice(0, upTo).map((state) => limit(state, state));
      expect(worstOf(judged(...limits), 'gap')?.name).toBe(order[upTo - 1]);
    }
  });

  it('has the least room among those in one state', () => {
    const judgement = judged(
      limit('wide', 'inside', 2),
      limit('tight', 'inside', 0.1),
      limit('flag', 'inside'),
    );
    expect(worstOf(judgement, 'gap')?.name).toBe('tight');
    expect(limitsOn(judgement, 'gap')).toHaveLength(3);
  });

  it('is absent where nothing is judged', () => {
    expect(worstOf(judged(limit('a', 'outside')), 'other')).toBeUndefined();
  });
});
