import type { Lettering } from '../lettering/lettering.ts';
import { type PaperName, papers } from './paper.ts';
import type { PrintFacts } from './print-facts.ts';
import { Sheet } from './sheet.ts';
import { headPlate } from './stop-plate.ts';
import { titleBlock } from './title-block.ts';

/** Sheets that are printed together. `sheet()` opens the next one; `finish()` numbers them once all are made. */
export class Printout {
  readonly facts: PrintFacts;
  readonly sheets: Sheet[] = [];
  readonly #paper: PaperName;
  readonly #lettering: Lettering;

  constructor(facts: PrintFacts, paper: PaperName, lettering: Lettering) {
    this.facts = facts;
    this.#paper = paper;
    this.#lettering = lettering;
  }

  sheet(): Sheet {
    const sheet = new Sheet(papers[this.#paper], this.#lettering);
    if (this.facts.stop !== undefined) headPlate(sheet, this.facts.stop);
    this.sheets.push(sheet);
    return sheet;
  }

  /** Puts the title block on every sheet. */
  finish(): this {
    for (const [i, sheet] of this.sheets.entries()) titleBlock(sheet, this.facts, i + 1, this.sheets.length);
    return this;
  }
}
