import type { OwnLimit, Plan } from '../../plan/plan.ts';
import { type LimitRead, readBound } from './read-limit.ts';

export type Side = 'low' | 'high' | 'near';

/** An own limit with one of its bounds, or its near band, as typed; nothing typed takes the bound away. */
export function changeLimit(plan: Plan, limit: OwnLimit, side: Side, typed: string): LimitRead {
  const read = readBound(plan, limit.result, side, typed);
  if (!read.ok) return read;
  const { [side]: _before, ...rest } = limit;
  if (side === 'near') return { ok: true, limit: { ...limit, near: read.value ?? 0 } };
  const next = read.value === undefined ? rest : { ...rest, [side]: read.value };
  return { ok: true, limit: next as OwnLimit };
}
