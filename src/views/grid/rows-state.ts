import type { Session } from '../../session/session.ts';
import { type Column, columnAt } from './columns.ts';
import { type Facts, factsOf, sameFacts } from './facts.ts';
import { type GridPage, type GridRow, isCellRow, isHead, rowsOf } from './rows.ts';

/** One place of the table: its row, its column, and what the row stands on. */
export interface Place {
  readonly row: GridRow;
  readonly column: Column;
  readonly facts: Facts;
}

/** What an edit changed: the rows themselves, or what some of them show. */
export type Moved = { readonly rows: true } | { readonly rows: false; readonly at: readonly number[] };

const nameOf = (row: GridRow): string => (isCellRow(row) ? row.name : row.kind);

const sameRows = (a: readonly GridRow[], b: readonly GridRow[]): boolean =>
  a.length === b.length && a.every((row, at) => nameOf(row) === nameOf(b[at] as GridRow));

/** The rows of a table and what each was last painted from, so that an edit repaints only what it moved. */
export class RowsState {
  readonly #session: Session;
  readonly #page: GridPage | undefined;
  #rows: readonly GridRow[];
  #facts: Facts[];
  #ownCells: Session['plan']['ownCells'];

  constructor(session: Session, page: GridPage | undefined) {
    this.#session = session;
    this.#page = page;
    this.#ownCells = session.plan.ownCells;
    this.#rows = this.#rowsNow();
    this.#facts = this.#rows.map((row) => factsOf(session, row));
  }

  get rows(): readonly GridRow[] {
    return this.#rows;
  }

  place(at: number, columnNumber: number): Place | undefined {
    const [row, column, facts] = [this.#rows[at], columnAt(columnNumber), this.#facts[at]];
    return row === undefined || column === undefined || facts === undefined
      ? undefined
      : { row, column, facts };
  }

  /** Takes in what the session now holds. */
  refresh(): Moved {
    const { ownCells } = this.#session.plan;
    // An own cell's label may stand in any row that follows from it.
    const all = ownCells !== this.#ownCells;
    if (all) {
      this.#ownCells = ownCells;
      const next = this.#rowsNow();
      if (!sameRows(this.#rows, next)) {
        this.#rows = next;
        this.#facts = next.map((row) => factsOf(this.#session, row));
        return { rows: true };
      }
    }
    const moved: number[] = [];
    this.#rows.forEach((row, at) => {
      if (isHead(row)) return;
      const now = factsOf(this.#session, row);
      const before = this.#facts[at];
      if (!all && before !== undefined && sameFacts(before, now)) return;
      this.#facts[at] = now;
      moved.push(at);
    });
    return { rows: false, at: moved };
  }

  #rowsNow(): readonly GridRow[] {
    return rowsOf(
      this.#page,
      this.#ownCells.map((cell) => cell.name),
    );
  }
}
