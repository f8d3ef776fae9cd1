import { inputNamed } from '../../plan/book.ts';
import { refusal } from '../../plan/bounds.ts';
import type { Value } from '../../plan/plan.ts';
import { type Relation, relationsWith } from '../../plan/relations.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Column } from '../../studies/points.ts';
import { type Extents, extentsFor, measureAll } from './extents.ts';

/** Puts 1 into `refused` at each point whose values cannot be. Gives back whether there is any. */
export type Refusing = (columns: readonly Column[], count: number, refused: Uint8Array) => boolean;

/** A check of every point, and whether columns of such extents need none, as hardly any do. */
interface Check {
  readonly clears: (extents: Extents) => boolean;
  readonly refuse: Refusing;
}

/** A check made point by point. */
const eachPoint =
  (isPast: (columns: readonly Column[], i: number) => boolean): Refusing =>
  (columns, count, refused) => {
    let any = false;
    for (let i = 0; i < count; i++) {
      if (!isPast(columns, i)) continue;
      refused[i] = 1;
      any = true;
    }
    return any;
  };

function pastBounds(cell: InputCell, place: number): Check {
  const { type, only, above = Number.NEGATIVE_INFINITY } = cell;
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = cell;
  const isFlag = type === 'flag';
  return {
    clears: ({ lows, highs }) => {
      const [low, high] = [lows[place] as number, highs[place] as number];
      const isAmong = type === 'number' || (type === 'whole' && low === high && Number.isInteger(low));
      return isAmong && only === undefined && low >= min && high <= max && low > above;
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
  const corner = (extents: Extents, which: number): number[] =>
    at.map((place, i) => {
      const ends = (which >> i) % 2 === 0 ? extents.lows : extents.highs;
      return place === -1 ? (stays[i] as number) : (ends[place] as number);
    });
  const corners = Array.from({ length: 2 ** names.length }, (_, which) => which);
  return {
    clears: (extents) => {
      const [least, most] = [corner(extents, 0)[0] as number, corner(extents, 1)[0] as number];
      return (
        (least > convexAbove || least === most) && corners.every((which) => holds(...corner(extents, which)))
      );
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
  const extents = extentsFor(varied.length);
  return (columns, count, refused) => {
    refused.fill(0, 0, count);
    measureAll(columns, count, extents);
    let any = false;
    for (const { clears, refuse } of checks) {
      if (!clears(extents)) any = refuse(columns, count, refused) || any;
    }
    return any;
  };
}
