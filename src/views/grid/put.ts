import { setOwnCell } from '../../plan/edit.ts';
import { ownNameRefusal } from '../../plan/own-name.ts';
import type { OwnCell } from '../../plan/plan.ts';
import { nameFrom } from '../../session/own-cells/name-from.ts';
import { readContent } from '../../session/own-cells/read-content.ts';
import type { Done, Session } from '../../session/session.ts';
import { parseEntry } from '../../units/parse-entry.ts';
import type { Column } from './columns.ts';
import { dropText, keepText } from './kept-text.ts';
import type { BookRow, GridRow } from './rows.ts';

const no = (why: string): Done => ({ ok: false, why });

function putOffBy(session: Session, { name, cell }: BookRow, typed: string): Done {
  const entry = parseEntry(typed, {
    name: `${cell.label}, off by`,
    kind: cell.unit === 'mm' ? 'length' : 'number',
    unit: cell.unit,
    bare: session.plan.units === 'in' ? 'in' : 'mm',
  });
  if (!entry.ok) return entry;
  if (entry.empty || typeof entry.value !== 'number') {
    return no(`How far ${cell.label} may be off is a number of at least 0.`);
  }
  return session.annotate(name, { offBy: entry.value });
}

function putOwn(session: Session, name: string, column: Column, typed: string): Done {
  const own = session.plan.ownCells.find((cell) => cell.name === name);
  if (own === undefined) return no(`There is no own cell named ${name}.`);
  const set = (cell: OwnCell): Done => session.edit(own.label, (plan) => setOwnCell(plan, cell));
  if (column === 'label') {
    const label = typed.trim();
    return label === '' ? no('A cell needs a label: write what it is called.') : set({ ...own, label });
  }
  if (column === 'unit') return set({ ...own, unit: typed.trim() || '–' });
  const content = readContent(session.plan, typed, own.label, own.unit);
  if (!content.ok) return content;
  const { formula: _, ...rest } = own;
  const { value, formula } = content;
  return set({ ...rest, value, ...(formula === undefined ? {} : { formula }) });
}

function putNew(session: Session, typed: string): Done {
  const label = typed.trim();
  if (label === '') return { ok: true };
  const name = nameFrom(label, (it) => ownNameRefusal(session.plan, it) !== undefined);
  if (name === '') return no(`No name can be made from “${label}”: begin it with a letter from a to z.`);
  return session.edit(`New cell: ${label}`, (plan) =>
    setOwnCell(plan, { name, label, unit: '–', value: null }),
  );
}

function putElsewhere(session: Session, row: GridRow, column: Column, typed: string): Done {
  switch (row.kind) {
    case 'new':
      return putNew(session, typed);
    case 'own':
      return putOwn(session, row.name, column, typed);
    case 'book':
      return row.cell.kind === 'result'
        ? no(`${row.cell.label} is worked out from other cells and cannot be typed over.`)
        : putOffBy(session, row, typed);
    default:
      return no(`“${row.title}” is a heading and holds no value.`);
  }
}

/** Puts what was typed into one cell of the table. A refusal keeps the text where it was typed, with its reason. */
export function put(session: Session, row: GridRow, column: Column, typed: string): Done {
  if (row.kind === 'book' && row.cell.kind !== 'result' && column === 'value') {
    return session.enter(row.name, typed);
  }
  const done = putElsewhere(session, row, column, typed);
  if (done.ok) dropText(session, row, column);
  else keepText(session, row, column, typed, done.why);
  return done;
}
