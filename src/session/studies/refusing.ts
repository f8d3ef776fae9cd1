import { inputNamed } from '../../plan/book.ts';
import { refusal } from '../../plan/bounds.ts';
import type { Value } from '../../plan/plan.ts';
import { type Relation, relationsWith } from '../../plan/relations.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Column } from '../../studies/points.ts';

/** Puts 1 into `refused` at each point whose values cannot be. Gives back whether there is any. */
export type Refusing = (columns: readonly Column[], count: number, refused: Uint8Array) => boolean;

type Check = Refusing;

/** A check made point by point. */
const eachPoint =
  (isPast: (columns: readonly Column[], i: number) => boolean): Check =>
  (columns, count, refused) => {
    let any = false;
    for (let i = 0; i < count; i++) {
      if (!isPast(columns, i)) continue;
      refused[i] = 1;
      any = true;
    }
    return any;
  };

/** Whether every number is within its bounds; the loop stands by itself to be quick. */
function allWithin(
  column: ArrayLike<number>,
  count: number,
  min: number,
  max: number,
  above: number,
): boolean {
  const isOff = (value: number): boolean => !(value >= min && value <= max && value > above);
  const inFours = count - (count % 4);
  for (let i = 0; i < inFours; i += 4) {
    if (
      isOff(column[i] as number) ||
      isOff(column[i + 1] as number) ||
      isOff(column[i + 2] as number) ||
      isOff(column[i + 3] as number)
    )
      return false;
  }
  for (let i = inFours; i < count; i++) if (isOff(column[i] as number)) return false;
  return true;
}

function allWhole(column: ArrayLike<number>, count: number): boolean {
  for (let i = 0; i < count; i++) if (!Number.isInteger(column[i])) return false;
  return true;
}

function allAmong(column: ArrayLike<number>, count: number, only: readonly number[]): boolean {
  for (let i = 0; i < count; i++) if (!only.includes(column[i] as number)) return false;
  return true;
}

/** Numbers are by far the most, and hardly ever past their bounds. */
function pastBounds(cell: InputCell, place: number): Check {
  const { type, only, above = Number.NEGATIVE_INFINITY } = cell;
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = cell;
  const isFlag = type === 'flag';
  const isPast = eachPoint((columns, i) => {
    const value = columns[place]?.[i] ?? null;
    return refusal(cell, isFlag && value !== null ? Boolean(value) : value) !== undefined;
  });
  if (type !== 'number' && type !== 'whole') return isPast;
  return (columns, count, refused) => {
    const column = columns[place] as ArrayLike<number>;
    const isFine =
      allWithin(column, count, min, max, above) &&
      (type === 'number' || allWhole(column, count)) &&
      (only === undefined || allAmong(column, count, only));
    return !isFine && isPast(columns, count, refused);
  };
}

/** Undefined when a value that stays is missing, so that the relation says nothing. */
function broken(
  { names, holds }: Relation,
  places: ReadonlyMap<string, number>,
  present: (name: string) => Value,
): Check | undefined {
  const stays: number[] = [];
  for (const name of names) {
    const value = places.has(name) ? 0 : present(name);
    if (typeof value !== 'number') return undefined;
    stays.push(value);
  }
  const [first = -1, second = -1, third = -1] = names.map((name) => places.get(name) ?? -1);
  const [a = 0, b = 0, c = 0] = stays;
  // No relation has more than three names; spreading them costs more than the check.
  return eachPoint(
    (columns, i) =>
      !holds(
        Number(columns[first]?.[i] ?? a),
        Number(columns[second]?.[i] ?? b),
        Number(columns[third]?.[i] ?? c),
      ),
  );
}

/** Bounds of each varied input, and relations among them and the values that stay. */
export function refusing(varied: readonly string[], present: (name: string) => Value): Refusing {
  const places = new Map(varied.map((name, i) => [name, i]));
  const checks = [
    ...varied.map((name, i) => {
      const cell = inputNamed(name);
      return cell === undefined ? undefined : pastBounds(cell, i);
    }),
    ...relationsWith(new Set(varied)).map((it) => broken(it, places, present)),
  ].filter((it) => it !== undefined);
  return (columns, count, refused) => {
    refused.fill(0, 0, count);
    let any = false;
    for (const check of checks) any = check(columns, count, refused) || any;
    return any;
  };
}
