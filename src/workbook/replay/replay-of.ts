import type { Engine } from '../engine.ts';
import { cellsOf } from '../limit-rule.ts';
import { lower } from './lower.ts';
import { plan } from './plan.ts';
import { type Asked, Replay } from './replay.ts';

export type Replayed =
  | { readonly ok: true; readonly replay: Replay }
  | { readonly ok: false; readonly why: string };

/** The cells that must be known for what is asked. */
export const wantedFor = ({ results, limits }: Asked): string[] => [
  ...new Set([...results, ...limits.flatMap(cellsOf)]),
];

/** A replay of what the engine holds, for these inputs varied; or why a study has to run on the engine. */
export function replayOf(engine: Engine, varied: readonly string[], asked: Asked): Replayed {
  const wanted = wantedFor(asked);
  const lowered = lower(engine, wanted, varied);
  if (!lowered.ok) return lowered;
  return { ok: true, replay: new Replay(plan(lowered.steps, varied, wanted), asked) };
}
