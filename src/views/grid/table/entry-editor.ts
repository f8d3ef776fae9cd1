import { TextEditor } from 'handsontable/editors/textEditor';

/** What an editor needs to know of the cell it opens on, and where its text goes. */
export interface Entries {
  /** The text it opens on. */
  readonly text: (row: number, column: number) => string;
  /** What it is called, read aloud. */
  readonly label: (row: number, column: number) => string;
  /** Id of the sentence that says why the text in the cell was refused. */
  readonly reason: (row: number, column: number) => string | undefined;
  readonly put: (row: number, column: number, typed: string) => void;
  /** The text goes into every chosen cell of the column. */
  readonly fill: (row: number, column: number, typed: string) => void;
}

const entriesOf = new WeakMap<object, Entries>();

/** Tells the editors of one table where their texts come from and go to. */
export const serveEntries = (hot: object, entries: Entries): void => {
  entriesOf.set(hot, entries);
};

/**
 * The grid's text editor, with a name, opened on the text as it was typed. What is typed goes straight to where it
 * belongs and never into the grid.
 */
export class EntryEditor extends TextEditor {
  get #entries(): Entries | undefined {
    return entriesOf.get(this.hot);
  }

  override createElements(type?: string): void {
    super.createElements(type);
    // Beside the grid rather than in it, where only rows may stand.
    this.hot.rootElement.parentElement?.append(this.TEXTAREA_PARENT);
    // Out there, the grid would take a click into the text for one that leaves it.
    for (const kind of ['mousedown', 'mouseup', 'click', 'touchstart', 'touchend']) {
      this.TEXTAREA_PARENT.addEventListener(kind, (event) => event.stopPropagation());
    }
    this.TEXTAREA.setAttribute('aria-label', 'Value');
    this.TEXTAREA.spellcheck = false;
    this.TEXTAREA.autocomplete = 'off';
    this.TEXTAREA.setAttribute('autocapitalize', 'off');
  }

  override beginEditing(initial?: unknown, event?: Event): void {
    const { row, col } = this;
    const text = row === null || col === null ? undefined : this.#entries?.text(row, col);
    super.beginEditing(initial ?? text, event);
  }

  override open(): void {
    super.open();
    const { row, col } = this;
    if (row === null || col === null) return;
    this.TEXTAREA.setAttribute('aria-label', this.#entries?.label(row, col) ?? 'Value');
    const reason = this.#entries?.reason(row, col);
    if (reason === undefined) {
      this.TEXTAREA.removeAttribute('aria-invalid');
      this.TEXTAREA.removeAttribute('aria-describedby');
    } else {
      this.TEXTAREA.setAttribute('aria-invalid', 'true');
      this.TEXTAREA.setAttribute('aria-describedby', reason);
    }
  }

  /** The grid asks for the focus once more after Escape, when nothing is open. */
  override focus(): void {
    if (this.isOpened()) super.focus();
  }

  /** Gives the focus back to the cell itself, so that a screen reader stands on it. */
  override close(): void {
    const held = this.TEXTAREA.ownerDocument.activeElement === this.TEXTAREA;
    super.close();
    if (held && this.row !== null && this.col !== null) {
      this.hot.getCell(this.row, this.col)?.focus({ preventScroll: true });
    }
  }

  /** One line is all a cell takes. */
  override getValue(): string {
    return this.TEXTAREA.value.replace(/\s*[\r\n]+\s*/g, ' ');
  }

  override saveValue(_value?: unknown, fills?: boolean): void {
    if (this.row === null || this.col === null) return;
    if (fills === true) this.#entries?.fill(this.row, this.col, this.getValue());
    else this.#entries?.put(this.row, this.col, this.getValue());
  }

  /** The browser's own keys serve inside the text; a second line has no meaning here. */
  override registerShortcuts(): void {}

  override unregisterShortcuts(): void {}
}
