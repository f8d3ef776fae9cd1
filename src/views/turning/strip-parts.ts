import type { Standing } from '../../studies/standing.ts';
import type { LimitTurns } from '../../studies/turning.ts';

/** A stretch of the range along which a limit stands alike. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly standing: Standing;
}

/** The stretches of one limit from end to end; whole numbers turn half way between two steps. */
export function stretches({ turns, first }: LimitTurns, low: number, high: number): readonly Stretch[] {
  let [from, standing] = [low, first];
  const found: Stretch[] = [];
  for (const turn of turns) {
    const at = (turn.below + turn.above) / 2;
    found.push({ from, to: at, standing });
    from = at;
    standing = turn.to;
  }
  return [...found, { from, to: high, standing }];
}

/** How the limit stands at a value. */
export const standingAt = (all: readonly Stretch[], value: number): Standing =>
  all.find((it) => value <= it.to)?.standing ?? 'no answer';
