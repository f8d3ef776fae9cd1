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

/** Numbers are by far the most, and most have no more than two bounds. */
function pastBounds(cell: InputCell, place: number): Check {
  const { type, only, above = Number.NEGATIVE_INFINITY } = cell;
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = cell;
  if (type === 'number' && only === undefined) {
    return (columns, count, refused) => {
      const column = columns[place] as ArrayLike<number>;
      let any = false;
      for (let i = 0; i < count; i++) {
        const value = column[i] as number;
        if (value >= min && value <= max && value > above) continue;
        refused[i] = 1;
        any = true;
      }
      return any;
    };
  }
  const isFlag = type === 'flag';
  return eachPoint((columns, i) => {
    const value = columns[place]?.[i] ?? null;
    return refusal(cell, isFlag && value !== null ? Boolean(value) : value) !== undefined;
  });
}

/** Undefined when a value that stays is missing, so that the relation says nothing. */
function broken(
  { names, holds }: Relation,
  places: ReadonlyMap<string, number>,
  present: (name: string) => Value,
): Check | undefined {
  const values: number[] = [];
  const moving: (readonly [at: number, place: number])[] = [];
  for (const [at, name] of names.entries()) {
    const place = places.get(name);
    const stays = place === undefined ? present(name) : 0;
    if (typeof stays !== 'number') return undefined;
    values.push(stays);
    if (place !== undefined) moving.push([at, place]);
  }
  return eachPoint((columns, i) => {
    for (const [at, place] of moving) values[at] = columns[place]?.[i] as number;
    return !holds(...values);
  });
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
