import type { State } from '../../calc/limits/judge.ts';
import type { Judgement, LimitAnswer } from '../../workbook/judged.ts';

const WORST_FIRST: readonly State[] = ['outside', 'no answer', 'near', 'inside', 'does not apply'];

const rank = (it: LimitAnswer): number => WORST_FIRST.indexOf(it.verdict.state);

const worse = (a: LimitAnswer, b: LimitAnswer): LimitAnswer => {
  if (rank(a) !== rank(b)) return rank(a) < rank(b) ? a : b;
  return (b.verdict.ratio ?? Number.POSITIVE_INFINITY) < (a.verdict.ratio ?? Number.POSITIVE_INFINITY)
    ? b
    : a;
};

const byResult = new WeakMap<Judgement, ReadonlyMap<string, LimitAnswer>>();

function worstByResult(judgement: Judgement): ReadonlyMap<string, LimitAnswer> {
  const known = byResult.get(judgement);
  if (known !== undefined) return known;
  const worst = new Map<string, LimitAnswer>();
  for (const it of judgement.limits) {
    const other = worst.get(it.result);
    worst.set(it.result, other === undefined ? it : worse(other, it));
  }
  byResult.set(judgement, worst);
  return worst;
}

/** Of the limits that judge a result, the one in the worst state, then with the least room. */
export const worstOf = (judgement: Judgement, result: string): LimitAnswer | undefined =>
  worstByResult(judgement).get(result);

/** Every limit that judges a result. */
export const limitsOn = (judgement: Judgement, result: string): readonly LimitAnswer[] =>
  judgement.limits.filter((it) => it.result === result);
