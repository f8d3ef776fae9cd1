import { fails, standingOf } from './standing.ts';
import type { Swept } from './sweep.ts';

/** A part of a sweep along which a limit either holds or fails; both ends stand so. What does not apply holds. */
export interface Span {
  readonly fails: boolean;
  /** It fails for want of an answer all along. */
  readonly lacks: boolean;
  readonly from: number;
  readonly to: number;
}

/** How one limit stands along a sweep, rising. Empty when the sweep knows no such limit. */
export function spansOf({ points, turnings }: Swept, limit: string): readonly Span[] {
  const [first] = points;
  const last = points.at(-1);
  const start = first?.limits.find((it) => it.name === limit);
  if (first === undefined || last === undefined || start === undefined) return [];
  const spans: Span[] = [];
  let from = first.x;
  let failing = fails(standingOf(start));
  let lacking = standingOf(start) === 'no answer';
  for (const turning of turnings) {
    if (turning.limit !== limit) continue;
    const lacks = turning.to === 'no answer';
    if (fails(turning.to) === failing) {
      lacking &&= lacks;
      continue;
    }
    spans.push({ fails: failing, lacks: lacking, from, to: turning.below });
    from = turning.above;
    failing = !failing;
    lacking = lacks;
  }
  return [...spans, { fails: failing, lacks: lacking, from, to: last.x }];
}

/** The parts of a sweep where no limit fails, rising. */
export function allHold({
  points,
  turnings,
}: Swept): readonly { readonly from: number; readonly to: number }[] {
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined) return [];
  const failing = new Set(first.limits.filter((it) => fails(standingOf(it))).map((it) => it.name));
  const found: { from: number; to: number }[] = [];
  let from = failing.size === 0 ? first.x : undefined;
  for (const [i, { limit, below, above, to }] of turnings.entries()) {
    if (fails(to)) failing.add(limit);
    else failing.delete(limit);
    // Limits that turn in the same bracket turn together.
    if (turnings[i + 1]?.above === above) continue;
    if (failing.size === 0) from ??= above;
    else if (from !== undefined) {
      found.push({ from, to: below });
      from = undefined;
    }
  }
  return from === undefined ? found : [...found, { from, to: last.x }];
}
