import { inputNamed } from '../../plan/book.ts';
import { refusal } from '../../plan/bounds.ts';
import type { Value } from '../../plan/plan.ts';
import { type Relation, relationsWith } from '../../plan/relations.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Column } from '../../studies/points.ts';
import { type Extent, measure } from './extent.ts';

/** Puts 1 into `refused` at each point whose values cannot be. Gives back whether there is any. */
export type Refusing = (columns: readonly Column[], count: number, refused: Uint8Array) => boolean;

/** A check of every point, and one that is quick to tell whether any could be refused, as hardly any are. */
interface Check {
  readonly clears: (columns: readonly Column[], count: number) => boolean;
  readonly refuse: Refusing;
}

/** A check made point by point. */
const eachPoint =
  (isOutside: (columns: readonly Column[], i: number) => boolean): Refusing =>
  (columns, count, refused) => {
    let any = false;
    for (let i = 0; i < count; i++) {
      if (!isOutside(columns, i)) continue;
      refused[i] = 1;
      any = true;
    }
    return any;
  };

/** Whether every number is within its bounds; the loop stands by itself to be quick. */
function allWithin(column: Float64Array, count: number, min: number, max: number, above: number): boolean {
  for (let i = 0; i < count; i++) {
    const value = column[i] as number;
    if (!(value >= min && value <= max && value > above)) return false;
  }
  return true;
}

function allWhole(column: Float64Array, count: number): boolean {
  for (let i = 0; i < count; i++) if (!Number.isInteger(column[i])) return false;
  return true;
}

function pastBounds(cell: InputCell, place: number): Check {
  const { type, only, above = Number.NEGATIVE_INFINITY } = cell;
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = cell;
  const isFlag = type === 'flag';
  const isNumber = (type === 'number' || type === 'whole') && only === undefined;
  return {
    clears: (columns, count) => {
      const column = columns[place];
      if (!isNumber || !(column instanceof Float64Array) || column.length < count) return false;
      return allWithin(column, count, min, max, above) && (type === 'number' || allWhole(column, count));
    },
    refuse: eachPoint((columns, i) => {
      const value = columns[place]?.[i] ?? null;
      return refusal(cell, isFlag && value !== null ? Boolean(value) : value) !== undefined;
    }),
  };
}

/** Undefined when a value that stays is missing, so that the relation says nothing. */
function broken(
  { names, holds, convexAbove = Number.NEGATIVE_INFINITY }: Relation,
  places: ReadonlyMap<string, number>,
  present: (name: string) => Value,
): Check | undefined {
  const stays: number[] = [];
  for (const name of names) {
    const value = places.has(name) ? 0 : present(name);
    if (typeof value !== 'number') return undefined;
    stays.push(value);
  }
  const at = names.map((name) => places.get(name) ?? -1);
  const extents = stays.map((value): Extent => ({ least: value, most: value }));
  const isMeasured = (columns: readonly Column[], count: number): boolean =>
    at.every((place, i) => {
      if (place === -1) return true;
      const column = columns[place];
      if (!(column instanceof Float64Array) || column.length < count) return false;
      measure(column, count, extents[i] as Extent);
      return true;
    });
  const corners = Array.from(
    { length: 2 ** names.length },
    (_, which) => (): boolean =>
      holds(...extents.map(({ least, most }, i) => ((which >> i) % 2 === 0 ? least : most))),
  );
  return {
    clears: (columns, count) => {
      if (!isMeasured(columns, count)) return false;
      const { least, most } = extents[0] as Extent;
      return (least > convexAbove || least === most) && corners.every((holds) => holds());
    },
    refuse: eachPoint(
      (columns, i) => !holds(...at.map((place, k) => Number(columns[place]?.[i] ?? stays[k]))),
    ),
  };
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
    for (const { clears, refuse } of checks) {
      if (!clears(columns, count)) any = refuse(columns, count, refused) || any;
    }
    return any;
  };
}
