import { kindsOf } from './kinds.ts';
import { fill, type Lane, laneOf } from './lanes.ts';
import type { GuardedStep, Program } from './program.ts';
import type { Kind } from './rule.ts';

const readBy = ({ args, guard }: GuardedStep): readonly number[] =>
  guard === undefined ? args : [...args, guard.slot];

/** The last step that reads each slot, by its place. */
function lastReads({ steps }: Program): ReadonlyMap<number, number> {
  const last = new Map<number, number>();
  for (const [place, step] of steps.entries()) {
    for (const slot of readBy(step)) last.set(slot, place);
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
  for (const [place, step] of steps.entries()) {
    const { out } = step;
    const kind = kinds[out] as Kind;
    // Before what the step reads is let go: no step may write where it still reads.
    lanes[out] ??= free.get(kind)?.pop() ?? laneOf(kind, size);
    for (const slot of new Set(readBy(step))) {
      if (last.get(slot) !== place || kept.has(slot)) continue;
      const lane = lanes[slot] as Lane;
      free.set(lane.kind, [...(free.get(lane.kind) ?? []), lane]);
    }
  }
  for (const [slot, value] of given) fill(lanes[slot] as Lane, value);
  return lanes as Lane[];
}
