import { kindsOf } from './kinds.ts';
import { fill, type Lane, laneOf } from './lanes.ts';
import type { Program } from './program.ts';
import type { Kind } from './rule.ts';

/** The last step that reads each slot, by its place. */
function lastReads({ steps }: Program): ReadonlyMap<number, number> {
  const last = new Map<number, number>();
  for (const [place, { args, guard }] of steps.entries()) {
    for (const slot of args) last.set(slot, place);
    if (guard !== undefined) last.set(guard.slot, place);
  }
  return last;
}

/**
 * A lane for every slot. Slots that only steps look at share lanes once nothing reads them any more, so that what a
 * block works on stays in the processor's nearest memory; inputs, what is given and what is wanted keep their own.
 */
export function sharedLanes(program: Program, size: number): readonly Lane[] {
  const { inputs, given, steps, wanted } = program;
  const kinds = kindsOf(program);
  const last = lastReads(program);
  const outs = new Set(steps.map(({ out }) => out));
  const kept = new Set([
    ...inputs.map(({ slot }) => slot),
    ...given.map(([slot]) => slot),
    ...wanted.map(([, slot]) => slot),
  ]);
  const lanes = kinds.map((kind, slot) =>
    outs.has(slot) && !kept.has(slot) ? undefined : laneOf(kind, size),
  );
  const free = new Map<Kind, Lane[]>();
  for (const [place, { args, guard, out }] of steps.entries()) {
    const kind = kinds[out] as Kind;
    // Before what the step reads is let go: no step may write where it still reads.
    lanes[out] ??= free.get(kind)?.pop() ?? laneOf(kind, size);
    for (const slot of new Set(guard === undefined ? args : [...args, guard.slot])) {
      if (last.get(slot) !== place || kept.has(slot)) continue;
      const lane = lanes[slot] as Lane;
      free.set(lane.kind, [...(free.get(lane.kind) ?? []), lane]);
    }
  }
  for (const [slot, value] of given) fill(lanes[slot] as Lane, value);
  return lanes as Lane[];
}
