import { quoted } from '../../units/quoted.ts';
import { inputNamed, inputs } from '../book.ts';
import { refusal } from '../bounds.ts';
import type { Reading } from '../plan.ts';
import type { InputCell } from '../template.ts';
import type { ReadingRow } from './document.ts';
import { present } from './present.ts';
import { Stop, twice } from './stop.ts';
import { typedAgrees } from './typed-agrees.ts';

/** Says the first few of a list of names, and how many more there are. */
const few = (names: readonly string[]): string =>
  names.length <= 5 ? names.join(', ') : `${names.slice(0, 5).join(', ')} and ${names.length - 5} more`;

const readingOfRow = ({ name: _name, off_by, value, ...rest }: ReadingRow): Reading =>
  present({ value, offBy: off_by, ...rest }) as Reading;

/** A reading whose typed text says what its value is; another text is dropped, for an edit would change the value unseen. */
function withTyped(cell: InputCell, reading: Reading, notes: string[]): Reading {
  if (typedAgrees(cell, reading)) return reading;
  const { typed = '', unit: _unit, ...rest } = reading;
  notes.push(
    `The text kept for ${cell.name}, ${quoted(typed)}, does not say what its value is: it was dropped, the value stands.`,
  );
  return rest;
}

function readingOf(cell: InputCell, row: ReadingRow, where: string, notes: string[]): Reading {
  const reading = readingOfRow(row);
  const why = refusal(cell, reading.value);
  if (why === undefined) return withTyped(cell, reading, notes);
  if (reading.formula === undefined) throw new Stop(where, why);
  notes.push(`The value last worked out for ${cell.name} cannot be: it was dropped, the formula stands.`);
  return withTyped(cell, { ...reading, value: null }, notes);
}

/**
 * The readings of a list of rows by input, in the order of the workbook. Stops at rows that cannot be; what was done
 * to the others goes into the notes.
 */
export function readingsOf(
  rows: readonly ReadingRow[],
  where: string,
  notes: string[],
): Map<string, Reading> {
  const names = rows.map((row) => row.name);
  const unknown = names.filter((name) => inputNamed(name) === undefined);
  if (unknown.length > 0)
    throw new Stop(where, `${where}: this workbook has no input named ${few(unknown)}.`);
  twice(names, where);
  const rowsByName = new Map(
    rows.map((row, i) => [row.name, { row, where: `${where}, row ${i + 1} (${row.name})` }]),
  );
  const found = new Map<string, Reading>();
  for (const cell of inputs) {
    const it = rowsByName.get(cell.name);
    if (it !== undefined) found.set(cell.name, readingOf(cell, it.row, it.where, notes));
  }
  return found;
}
