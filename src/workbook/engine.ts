import { DetailedCellError, HyperFormula, type RawCellContent } from 'hyperformula';
import type { Value } from '../plan/plan.ts';
import { OPTIONS } from './engine-options.ts';
import { EMPTY_SENTENCE, errorSentence } from './error-sentence.ts';
import { registerLibrary } from './functions.ts';
import { reasonFormula } from './no-answer.ts';

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
}

const SHEET = 'plan';

const same = (a: Content | undefined, b: Content): boolean =>
  a === b ||
  (typeof a === 'object' && a !== null && typeof b === 'object' && b !== null && a.formula === b.formula);

const raw = (name: string, content: Content, label: (name: string) => string): RawCellContent => {
  if (content === null) return reasonFormula(`${label(name)} is empty.`);
  return typeof content === 'object' ? content.formula : content;
};

const answerOf = (value: unknown): Answer => {
  if (typeof value === 'number' || typeof value === 'boolean' || typeof value === 'string') return { value };
  if (value instanceof DetailedCellError) {
    return { value: null, why: errorSentence(value.type, value.message) };
  }
  return { value: null, why: EMPTY_SENTENCE };
};

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

  /** Names are laid out in the order given; `label` says what an empty cell is called in a reason. */
  constructor(contents: ReadonlyMap<string, Content>, label: (name: string) => string) {
    registerLibrary();
    this.#label = label;
    const names = [...contents.keys()];
    this.#engine = HyperFormula.buildFromSheets(
      { [SHEET]: names.map((name) => [raw(name, contents.get(name) ?? null, label)]) },
      OPTIONS,
      [
        { name: 'TRUE', expression: '=TRUE()' },
        { name: 'FALSE', expression: '=FALSE()' },
        ...names.map((name, row) => ({ name, expression: `=${SHEET}!$A$${row + 1}` })),
      ],
    );
    this.#sheet = this.#engine.getSheetId(SHEET) ?? 0;
    names.forEach((name, row) => {
      this.#rows.set(name, row);
      this.#nameOfRow.push(name);
      this.#contents.set(name, contents.get(name) ?? null);
      this.#answers.set(name, answerOf(this.#engine.getCellValue({ sheet: this.#sheet, row, col: 0 })));
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
   * nothing: when the engine refuses one, none is kept and it throws.
   */
  set(contents: Iterable<readonly [string, Content]>): ReadonlySet<string> {
    const wanted: [string, Content][] = [];
    for (const [name, content] of contents) {
      if (!same(this.#contents.get(name), content)) wanted.push([name, content]);
    }
    if (wanted.length === 0) return new Set();
    for (const [name] of wanted) if (!this.#rows.has(name)) this.#add(name);
    const before = wanted.map(([name]) => [name, this.#contents.get(name) ?? null] as const);
    try {
      return this.#write(wanted);
    } catch (error) {
      this.#write(before);
      throw error;
    }
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
    return { engine: this.#engine, sheet: this.#sheet, rows: this.#rows, nameOfRow: this.#nameOfRow };
  }

  destroy(): void {
    this.#engine.destroy();
  }

  #add(name: string): void {
    const row = this.#engine.getSheetDimensions(this.#sheet).height;
    this.#engine.setCellContents({ sheet: this.#sheet, row, col: 0 }, 0);
    this.#engine.addNamedExpression(name, `=${SHEET}!$A$${row + 1}`);
    this.#rows.set(name, row);
    this.#nameOfRow[row] = name;
  }

  #write(contents: readonly (readonly [string, Content])[]): ReadonlySet<string> {
    const changes = this.#engine.batch(() => {
      for (const [name, content] of contents) {
        const row = this.#rows.get(name);
        if (row === undefined) continue;
        this.#engine.setCellContents({ sheet: this.#sheet, row, col: 0 }, raw(name, content, this.#label));
      }
    });
    for (const [name, content] of contents) this.#contents.set(name, content);
    const changed = new Set<string>();
    for (const change of changes) {
      if (!('address' in change) || change.address === undefined) continue;
      const name = this.#nameOfRow[change.address.row];
      if (name === undefined || !this.#contents.has(name)) continue;
      this.#answers.set(name, answerOf(change.newValue));
      changed.add(name);
    }
    return changed;
  }
}
