import { DetailedCellError, HyperFormula, type RawCellContent } from 'hyperformula';
import type { Value } from '../plan/plan.ts';
import { figureNamed } from '../plan/table-figures.ts';
import { OPTIONS } from './engine-options.ts';
import { EMPTY_SENTENCE, errorSentence } from './error-sentence.ts';
import { registerLibrary } from './functions.ts';
import { withinText } from './longest-text.ts';
import { reasonFormula } from './no-answer.ts';
import {
  type CompleteRow,
  completeRows,
  type Rows,
  TABLE_SHEET,
  type TableContents,
  tableBlock,
  tablePlaces,
  tableRange,
  withFigures,
} from './table-sheet.ts';

/** What a cell holds: a value, or a formula already read by `readFormula`. */
export type Content = Value | { readonly formula: string };

export interface Answer {
  /** null when it cannot be computed. */
  readonly value: Value;
  /** Why there is no value; an error's short word when the engine gave no sentence. */
  readonly why?: string;
}

/** The formula engine behind the names. */
export interface Inside {
  readonly engine: HyperFormula;
  readonly sheet: number;
  readonly rows: ReadonlyMap<string, number>;
  readonly nameOfRow: readonly string[];
  readonly tableSheet: number;
  /** The complete rows of a survey table. */
  readonly table: (name: string) => readonly CompleteRow[];
}

const SHEET = 'plan';

const same = (a: Content | undefined, b: Content): boolean =>
  a === b ||
  (typeof a === 'object' && a !== null && typeof b === 'object' && b !== null && a.formula === b.formula);

const raw = (name: string, content: Content, label: (name: string) => string): RawCellContent => {
  if (content === null) return reasonFormula(`${label(name)} is empty.`);
  return typeof content === 'object' ? withinText(content.formula) : content;
};

const answerOf = (value: unknown): Answer => {
  if (typeof value === 'number' || typeof value === 'boolean' || typeof value === 'string') return { value };
  if (value instanceof DetailedCellError) {
    return { value: null, why: errorSentence(value.type, value.message) };
  }
  return { value: null, why: EMPTY_SENTENCE };
};

/** A number as the engine holds it, whatever format it carries there. */
const bareNumber = (value: unknown): unknown =>
  typeof value === 'object' && value !== null && 'val' in value ? value.val : value;

const sameRows = (a: Rows = [], b: Rows = []): boolean =>
  a === b || (a.length === b.length && a.every((row, i) => row.every((cell, k) => cell === b[i]?.[k])));

/** The tables' sheet as it starts: row by row, the tables side by side. */
function sheetOf(tables: TableContents): (number | null)[][] {
  const blocks = tablePlaces.map((place) => tableBlock(place, tables.get(place.name) ?? []));
  return (blocks[0] ?? []).map((_, i) => blocks.flatMap((block) => block[i] ?? []));
}

/**
 * The workbook's cells in the formula engine: each name is one cell of a single column. The engine is the truth for
 * every edit; this class only hands it contents by name and keeps what it answered.
 */
export class Engine {
  readonly #engine: HyperFormula;
  readonly #sheet: number;
  readonly #label: (name: string) => string;
  readonly #rows = new Map<string, number>();
  /** The name at each row; deleted ones keep their row, so that they can come back. */
  readonly #nameOfRow: string[] = [];
  readonly #contents = new Map<string, Content>();
  readonly #answers = new Map<string, Answer>();
  readonly #tableSheet: number;
  #tables: TableContents;

  /** Names are laid out in the order given; `label` says what an empty cell is called in a reason. */
  constructor(
    contents: ReadonlyMap<string, Content>,
    label: (name: string) => string,
    tables: TableContents = new Map(),
  ) {
    registerLibrary();
    this.#tables = tables;
    this.#label = label;
    const names = [...contents.keys()];
    this.#engine = HyperFormula.buildFromSheets(
      {
        [SHEET]: names.map((name) => [raw(name, contents.get(name) ?? null, label)]),
        [TABLE_SHEET]: sheetOf(tables),
      },
      OPTIONS,
      [
        { name: 'TRUE', expression: '=TRUE()' },
        { name: 'FALSE', expression: '=FALSE()' },
        ...tablePlaces.map((place) => ({ name: place.name, expression: tableRange(place) })),
        ...names.map((name, row) => ({ name, expression: `=${SHEET}!$A$${row + 1}` })),
      ],
    );
    this.#sheet = this.#engine.getSheetId(SHEET) ?? 0;
    this.#tableSheet = this.#engine.getSheetId(TABLE_SHEET) ?? 1;
    names.forEach((name, row) => {
      this.#rows.set(name, row);
      this.#nameOfRow.push(name);
      this.#contents.set(name, contents.get(name) ?? null);
      this.#answers.set(
        name,
        this.#answerAt(row, this.#engine.getCellValue({ sheet: this.#sheet, row, col: 0 })),
      );
    });
  }

  has(name: string): boolean {
    return this.#contents.has(name);
  }

  content(name: string): Content | undefined {
    return this.#contents.get(name);
  }

  answer(name: string): Answer {
    return this.#answers.get(name) ?? { value: null, why: `There is no cell named ${name}.` };
  }

  /** Every name, in order. */
  get names(): readonly string[] {
    return [...this.#contents.keys()];
  }

  /**
   * Puts contents into cells, adding names that are new, and gives back the names whose answers changed. All or
   * nothing: when the engine refuses one, none is kept and it throws. The name of a table's figure stands for that.
   */
  set(contents: Iterable<readonly [string, Content]>): ReadonlySet<string> {
    const wanted: [string, Content][] = [];
    const figures: [string, Content][] = [];
    for (const [name, content] of contents) {
      if (figureNamed(name) !== undefined) figures.push([name, content]);
      else if (!same(this.#contents.get(name), content)) wanted.push([name, content]);
    }
    const moved = figures.length === 0 ? [] : this.setTables(withFigures(this.#tables, figures));
    if (wanted.length === 0) return new Set(moved);
    for (const [name] of wanted) if (!this.#rows.has(name)) this.#add(name);
    const before = wanted.map(([name]) => [name, this.#contents.get(name) ?? null] as const);
    try {
      return new Set([...moved, ...this.#write(wanted)]);
    } catch (error) {
      this.#write(before);
      throw error;
    }
  }

  /** Puts rows into the survey's tables; those not named are empty. Gives back the names whose answers changed. */
  setTables(tables: TableContents): ReadonlySet<string> {
    const wanted = tablePlaces.filter(({ name }) => !sameRows(this.#tables.get(name), tables.get(name)));
    this.#tables = tables;
    if (wanted.length === 0) return new Set();
    return this.#batch(() => {
      for (const place of wanted) {
        this.#engine.setCellContents(
          { sheet: this.#tableSheet, row: 0, col: place.column },
          tableBlock(place, tables.get(place.name) ?? []),
        );
      }
    });
  }

  /** Takes cells away; formulas that still use their names say so. */
  remove(names: Iterable<string>): ReadonlySet<string> {
    const gone = [...names].filter((name) => this.#contents.has(name));
    const changed = this.#write(
      gone.map((name) => [name, { formula: reasonFormula(`The cell ${name} was deleted.`) }]),
    );
    for (const name of gone) {
      this.#contents.delete(name);
      this.#answers.delete(name);
    }
    return changed;
  }

  /** What `replay/parsed.ts` reads the engine's own parsed formulas from; never written through. */
  inside(): Inside {
    return {
      engine: this.#engine,
      sheet: this.#sheet,
      rows: this.#rows,
      nameOfRow: this.#nameOfRow,
      tableSheet: this.#tableSheet,
      table: (name) => completeRows(this.#tables.get(name) ?? []),
    };
  }

  destroy(): void {
    this.#engine.destroy();
  }

  /** What a cell answers; the engine's rounding makes no number of the very least and greatest, which go unrounded. */
  #answerAt(row: number, value: unknown): Answer {
    if (typeof value !== 'number' || Number.isFinite(value)) return answerOf(value);
    const held = this.#engine.dependencyGraph.getCellValue({ sheet: this.#sheet, row, col: 0 });
    return answerOf(bareNumber(held));
  }

  #add(name: string): void {
    const row = this.#engine.getSheetDimensions(this.#sheet).height;
    this.#engine.setCellContents({ sheet: this.#sheet, row, col: 0 }, 0);
    this.#engine.addNamedExpression(name, `=${SHEET}!$A$${row + 1}`);
    this.#rows.set(name, row);
    this.#nameOfRow[row] = name;
  }

  #write(contents: readonly (readonly [string, Content])[]): ReadonlySet<string> {
    return this.#batch(
      () => {
        for (const [name, content] of contents) {
          const row = this.#rows.get(name);
          if (row === undefined) continue;
          this.#engine.setCellContents({ sheet: this.#sheet, row, col: 0 }, raw(name, content, this.#label));
        }
      },
      () => {
        for (const [name, content] of contents) this.#contents.set(name, content);
      },
    );
  }

  /** Runs writes as one, and keeps the answers that they changed. */
  #batch(writes: () => void, written?: () => void): ReadonlySet<string> {
    const changes = this.#engine.batch(writes);
    written?.();
    const changed = new Set<string>();
    for (const change of changes) {
      if (!('address' in change) || change.address === undefined) continue;
      if (change.address.sheet !== this.#sheet || change.address.col !== 0) continue;
      const name = this.#nameOfRow[change.address.row];
      if (name === undefined || !this.#contents.has(name)) continue;
      const answer = this.#answerAt(change.address.row, change.newValue);
      const before = this.#answers.get(name);
      // The engine tells of every cell without an answer each time; most still lack it for the same reason.
      if (before?.why !== undefined && before.why === answer.why) continue;
      this.#answers.set(name, answer);
      changed.add(name);
    }
    return changed;
  }
}
