import { handoverRecord, type RecordPart } from '../../fitting/handover.ts';
import { orderOfWork } from '../../fitting/order-of-work.ts';
import { CAUTION } from '../../plan/caution.ts';
import type { CellName } from '../../plan/names.ts';
import { styles } from '../lettering/styles.ts';
import { Flow } from '../page/flow.ts';
import type { Printout } from '../page/printout.ts';
import { BLANK, TICK } from '../page/sheet.ts';
import { printoutFor, type SheetInput } from '../sheet-input.ts';

/** Where what is written by hand begins, mm from the left. */
const LABELS = 62;
const GAP = 3;

/** A label with what was written down, or with ruled lines to write on. */
function entry(flow: Flow, label: string, value: string | undefined, lines: number): void {
  const words = flow.sheet.textHeight(label, LABELS - GAP);
  if (value !== undefined) {
    const room = flow.sheet.area.width - LABELS;
    const height = Math.max(words, flow.sheet.textHeight(value, room, 'label'));
    flow.place(height + 1.5, (sheet, x, y, width) => {
      sheet.text(label, x, y, { width: LABELS - GAP });
      sheet.text(value, x + LABELS, y, { style: 'label', width: width - LABELS });
    });
    return;
  }
  flow.place(Math.max(words, lines * BLANK) + 1, (sheet, x, y, width) => {
    sheet.text(label, x, y + Math.max(0, BLANK - words), { width: LABELS - GAP });
    for (let i = 0; i < lines; i++) sheet.blank(x + LABELS, y + i * BLANK, width - LABELS);
  });
}

/** What is still to be looked at: a square to tick, and a line for who and when. */
function due(flow: Flow, label: string, what: string, value: string | undefined): void {
  const room = flow.sheet.area.width - TICK - GAP;
  const words = flow.sheet.textHeight(`${label}. ${what}`, room);
  const under = value === undefined ? BLANK : styles.text.line;
  flow.place(words + under + 1, (sheet, x, y, width) => {
    const left = x + TICK + GAP;
    if (value === undefined) sheet.tick(x, y + 0.3);
    const below = sheet.text(`${label}. ${what}`, left, y, { width: room });
    if (value !== undefined) {
      sheet.text(`Done: ${value}`, left, below, { style: 'label' });
      return;
    }
    const at = below + BLANK - styles.small.line - 0.4;
    sheet.text('Done by', left, at, { style: 'small' });
    sheet.blank(left + 14, below, width * 0.5);
    sheet.text('on', left + 14 + width * 0.5 + GAP, at, { style: 'small' });
    sheet.blank(left + 20 + width * 0.5 + GAP, below, width * 0.22);
  });
}

function set(flow: Flow, part: RecordPart): void {
  switch (part.kind) {
    case 'title':
      flow.title(part.text);
      break;
    case 'heading':
      flow.section(part.text);
      break;
    case 'entry':
      entry(flow, part.label, part.value, part.lines);
      break;
    case 'due':
      due(flow, part.label, part.what, part.value);
      break;
    default:
      flow.text(part.text);
  }
}

/** What was fitted, by whom and when, and what remains to be checked; a ruled blank wherever nothing is written yet. */
export function handoverSheet(input: SheetInput): Printout {
  const { plan, scenario, units, answer } = input;
  const printout = printoutFor(input, 'handover record');
  const flow = new Flow(printout);
  const planned = (name: CellName) => answer(name).value;
  for (const part of handoverRecord({
    plan: { ...plan, active: scenario },
    units,
    steps: orderOfWork({ ask: planned, units }),
    planned,
  })) {
    // The title block of every sheet carries the cautions.
    if (part.kind !== 'text' || part.text !== CAUTION) set(flow, part);
  }
  return printout.finish();
}
