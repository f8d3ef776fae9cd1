import type { Value } from '../../plan/plan.ts';
import type { PointEvaluator } from '../../studies/points.ts';
import { type Batch, batchOf, type Replay } from '../../workbook/replay/replay.ts';
import { blank, pointsIn } from './buffers.ts';
import { refusing } from './refusing.ts';

/** Answers many points by a replay that was proved equal to the engine. */
export function replayPoints(replay: Replay, present: (name: string) => Value): PointEvaluator {
  const { asked, program } = replay;
  const inputs = program.inputs.map((it) => it.name);
  const refuse = refusing(inputs, present);
  let batch: Batch | undefined;
  let refused = new Uint8Array(0);
  return {
    inputs,
    results: asked.results,
    limits: asked.limits.map((it) => it.name),
    idle: new Set(program.inputs.flatMap(({ name, idle }) => (idle ? [name] : []))),
    evaluateMany(columns, count) {
      if (batch === undefined || refused.length < count) {
        batch = batchOf(asked, count);
        refused = new Uint8Array(count);
      }
      const any = refuse(columns, count, refused);
      const { results, limits } = replay.evaluateMany(columns, count, batch);
      const buffers = { results, limits, refused };
      if (any) blank(buffers, count);
      return pointsIn(buffers, count);
    },
  };
}
