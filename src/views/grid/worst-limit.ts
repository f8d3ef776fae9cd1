import { byWorst } from '../../calc/limits/worst-first.ts';
import type { Judgement, LimitAnswer } from '../../workbook/judged.ts';

const worse = (a: LimitAnswer, b: LimitAnswer): LimitAnswer => (byWorst(b, a) < 0 ? b : a);

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

/** Of the limits that judge a result, the worst. */
export const worstOf = (judgement: Judgement, result: string): LimitAnswer | undefined =>
  worstByResult(judgement).get(result);

/** Every limit that judges a result. */
export const limitsOn = (judgement: Judgement, result: string): readonly LimitAnswer[] =>
  judgement.limits.filter((it) => it.result === result);
