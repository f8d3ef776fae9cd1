import type { Engine } from '../engine.ts';
import { cellsOf } from '../limit-rule.ts';
import { lower } from './lower.ts';
import { plan } from './plan.ts';
import { type Asked, Replay } from './replay.ts';
import { flagOf, isRuledOut } from './ruled-out.ts';

export type Replayed =
  | { readonly ok: true; readonly replay: Replay }
  | { readonly ok: false; readonly why: string };

/** A replay of what the engine holds, for these inputs varied; or why a study has to run on the engine. */
export function replayOf(engine: Engine, varied: readonly string[], asked: Asked): Replayed {
  const { results, limits } = asked;
  const lowered = lower(engine, new Set([...results, ...limits.flatMap(cellsOf)]), varied);
  if (!lowered.ok) return lowered;
  const flags = limits.flatMap((rule) => flagOf(rule) ?? []);
  const flagged = plan(lowered.steps, varied, [...new Set(flags)]);
  const judged = limits.filter((rule) => !isRuledOut(rule, flagged));
  const wanted = [...new Set([...results, ...flags, ...judged.flatMap(cellsOf)])];
  return { ok: true, replay: new Replay(plan(lowered.steps, varied, wanted), asked) };
}
