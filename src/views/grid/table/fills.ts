import { type Block, filledDown, filledFrom, filledWith } from '../fill.ts';
import type { Entry } from '../put-many.ts';
import type { Place, RowsState } from '../rows-state.ts';
import { chosenPlace, type Hot } from './chosen.ts';

interface Fills {
  /** Fills the chosen cells with what the chosen cell holds. */
  readonly fill: () => void;
  /** Fills them with what the uppermost of their column holds. */
  readonly fillDown: () => void;
  /** Fills those of a column with a text. */
  readonly fillWith: (column: Place['column'], typed: string) => void;
}

interface Ways {
  readonly onEntries: (entries: readonly Entry[]) => void;
  /** There was nothing to fill, or nothing to fill it with. */
  readonly onNone: () => void;
}

/** Fills the cells that are chosen in a table. */
export function tableFills(hot: () => Hot, state: RowsState, { onEntries, onNone }: Ways): Fills {
  const placeAt = state.place.bind(state);
  const blocks = (): readonly Block[] =>
    (hot().getSelected() ?? []).map(([row = 0, col = 0, toRow = row, toCol = col]) => ({
      from: { row, col },
      to: { row: toRow, col: toCol },
    }));
  const put = (entries: readonly Entry[]): void => {
    if (entries.length > 0) onEntries(entries);
    else onNone();
  };
  return {
    fill: () => put(filledFrom(blocks(), placeAt, chosenPlace(hot(), state))),
    fillDown: () => put(filledDown(blocks(), placeAt)),
    fillWith: (column, typed) => put(filledWith(blocks(), placeAt, column, typed)),
  };
}
