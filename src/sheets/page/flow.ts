import type { StyleName } from '../lettering/styles.ts';
import { LINE } from '../marks/mark.ts';
import type { Printout } from './printout.ts';
import { type Sheet, styleOf } from './sheet.ts';
import { type Column, headHeight, type Row, rowHeight, tableHead, tableRow } from './table.ts';

/**
 * Sets things one under the other and goes on to the next sheet when one is full.
 *
 *     const flow = new Flow(printout);
 *     flow.title('Order list');
 *     flow.section('Bolts');
 *     flow.text('Two bolts hold the lower bracket.');
 *     flow.table([{ head: 'Place' }, { head: 'Length', width: 20, align: 'right' }], [{ cells: ['Lower', '80 mm'] }]);
 *     flow.place(60, (sheet, x, y, width) => drawing(sheet, scene, { x, y, width, height: 60 }));
 */
export class Flow {
  readonly #printout: Printout;
  #sheet: Sheet;
  /** Where the next thing goes, mm from the page's top. */
  y: number;

  constructor(printout: Printout) {
    this.#printout = printout;
    this.#sheet = printout.sheet();
    this.y = this.#sheet.area.y;
  }

  get sheet(): Sheet {
    return this.#sheet;
  }

  /** Height left on this sheet, mm. */
  get left(): number {
    return this.#sheet.bottom - this.y;
  }

  /** Goes on to the next sheet. */
  next(): void {
    this.#sheet = this.#printout.sheet();
    this.y = this.#sheet.area.y;
  }

  /** Goes on to the next sheet unless this much height is left, mm. */
  need(height: number): void {
    if (this.left < height && this.y > this.#sheet.area.y) this.next();
  }

  space(height: number): void {
    this.y = Math.min(this.y + height, this.#sheet.bottom);
  }

  title(text: string): void {
    const { x, width } = this.#sheet.area;
    this.need(30);
    this.y = this.#sheet.text(text, x, this.y, { style: 'page', width }) + 2;
  }

  /** A heading with a rule over it; it keeps at least `keep` mm with it on its sheet. */
  section(text: string, keep = 20): void {
    const { x, width } = this.#sheet.area;
    this.need(keep);
    if (this.y > this.#sheet.area.y) this.space(4);
    this.#sheet.line(x, this.y, x + width, this.y, { line: LINE.outline });
    this.y = this.#sheet.text(text, x, this.y + 1.2, { style: 'section', width }) + 0.8;
  }

  text(text: string, style: StyleName = 'text'): void {
    const { x, width } = this.#sheet.area;
    for (const line of this.#sheet.lettering.lines(text, styleOf(style), width)) {
      this.need(styleOf(style).line);
      this.y = this.#sheet.text(line, x, this.y, { style });
    }
    this.space(1);
  }

  /** A table that may run over: its head is set again on every sheet. */
  table(columns: readonly Column[], rows: readonly Row[]): void {
    const { x, width } = this.#sheet.area;
    const height = (row: Row | undefined): number =>
      row === undefined ? 0 : rowHeight(this.#sheet, row, columns, width);
    const head = headHeight(this.#sheet, columns, width);
    const together = (i: number): number =>
      height(rows[i]) + (rows[i]?.heading === undefined ? 0 : height(rows[i + 1]));
    this.need(head + together(0));
    this.y = tableHead(this.#sheet, columns, x, this.y, width);
    for (const [i, row] of rows.entries()) {
      if (this.left < together(i)) {
        this.next();
        this.y = tableHead(this.#sheet, columns, x, this.y, width);
      }
      this.y = tableRow(this.#sheet, row, columns, x, this.y, width);
    }
    this.space(2);
  }

  /** Keeps a block of a known height together on one sheet. */
  place(height: number, draw: (sheet: Sheet, x: number, y: number, width: number) => void): void {
    this.need(height);
    const { x, width } = this.#sheet.area;
    draw(this.#sheet, x, this.y, width);
    this.y += height;
  }
}
