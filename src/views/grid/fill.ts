import { copyText } from './edit-text.ts';
import type { Entry } from './put-many.ts';
import { isEditable } from './row-look.ts';
import type { Place } from './rows-state.ts';

/** A block of cells as the grid counts them, its ends in any order. */
export interface Block {
  readonly from: { readonly row: number; readonly col: number };
  readonly to: { readonly row: number; readonly col: number };
}

type PlaceAt = (at: number, columnNumber: number) => Place | undefined;

const between = (a: number, b: number): readonly number[] =>
  Array.from({ length: Math.abs(b - a) + 1 }, (_, i) => Math.max(0, Math.min(a, b)) + i);

const isTaking = (place: Place | undefined): place is Place =>
  place !== undefined && isEditable(place.row, place.column);

/** A column of a block: its places that take typing, from above. */
const columnsOf = (blocks: readonly Block[], placeAt: PlaceAt): readonly (readonly Place[])[] =>
  blocks.flatMap(({ from, to }) =>
    between(from.col, to.col).map((columnNumber) =>
      between(from.row, to.row)
        .map((at) => placeAt(at, columnNumber))
        .filter(isTaking),
    ),
  );

const entry = ({ row, column }: Place, typed: string): Entry => ({ row, column, typed });

/** A text for every chosen cell of one column. */
export const filledWith = (
  blocks: readonly Block[],
  placeAt: PlaceAt,
  column: Place['column'],
  typed: string,
): readonly Entry[] =>
  typed.trim() === ''
    ? []
    : columnsOf(blocks, placeAt)
        .flat()
        .filter((place) => place.column === column)
        .map((place) => entry(place, typed));

/** What one cell holds, for every other chosen cell of its column; nothing from a cell that holds nothing. */
export function filledFrom(
  blocks: readonly Block[],
  placeAt: PlaceAt,
  source: Place | undefined,
): readonly Entry[] {
  if (!isTaking(source)) return [];
  const typed = copyText(source.row, source.column, source.facts);
  return filledWith(blocks, placeAt, source.column, typed).filter((it) => it.row !== source.row);
}

/** What the uppermost cell of each chosen column holds, for the cells under it. */
export const filledDown = (blocks: readonly Block[], placeAt: PlaceAt): readonly Entry[] =>
  columnsOf(blocks, placeAt).flatMap(([source, ...under]) => {
    if (source === undefined) return [];
    const typed = copyText(source.row, source.column, source.facts);
    return typed.trim() === '' ? [] : under.map((place) => entry(place, typed));
  });
