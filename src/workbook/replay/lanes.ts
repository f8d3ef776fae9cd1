import type { Kind } from './rule.ts';
import { type Fault, isFault, noAnswer, type Scalar } from './scalar.ts';

/**
 * One slot over a block of points. Numbers and yes/no (as 1 and 0) stand in `numbers`, where NaN says that the point
 * has an error, told in `faults`. A slot that may hold texts, nothing, or different kinds keeps its values in `any`.
 */
export interface Lane {
  readonly kind: Kind;
  readonly numbers: Float64Array;
  readonly faults: Fault[];
  readonly any: Scalar[] | undefined;
  /** No point of the block has an error here; told by whatever wrote the slot last. */
  clean: boolean;
  /** The same value at every point of every block, where it is known beforehand. */
  fixed: Scalar | undefined;
}

const NEVER_TOLD: Fault = noAnswer('');

export const isTyped = (kind: Kind): boolean => kind !== 'text' && kind !== 'mixed';

export function laneOf(kind: Kind, size: number): Lane {
  const typed = isTyped(kind);
  return {
    kind,
    numbers: new Float64Array(typed ? size : 0),
    faults: typed ? new Array<Fault>(size).fill(NEVER_TOLD) : [],
    any: typed ? undefined : new Array<Scalar>(size).fill(null),
    clean: typed,
    fixed: undefined,
  };
}

/** What a slot holds at one point. */
export function read({ kind, numbers, faults, any }: Lane, i: number): Scalar {
  if (any !== undefined) return any[i] as Scalar;
  const value = numbers[i] as number;
  if (value !== value) return faults[i] as Fault;
  return kind === 'boolean' ? value !== 0 : value;
}

/** Puts a value into a slot at one point; its kind must be the slot's. An error leaves the slot no longer clean. */
export function write(lane: Lane, i: number, value: Scalar): void {
  const { numbers, faults, any } = lane;
  if (any !== undefined) any[i] = value;
  else if (isFault(value)) {
    lane.clean = false;
    numbers[i] = Number.NaN;
    faults[i] = value;
  } else numbers[i] = Number(value);
}

/** Puts one value at every point, for good. */
export function fill(lane: Lane, value: Scalar): void {
  lane.fixed = value;
  lane.clean = lane.any === undefined && !isFault(value);
  const size = lane.any?.length ?? lane.numbers.length;
  for (let i = 0; i < size; i++) write(lane, i, value);
}
