import type { TableRow } from '../../plan/edit/tables.ts';
import type { RowNote } from '../../plan/plan.ts';
import type { TableTemplate } from '../../plan/template.ts';
import type { Done } from '../../session/session.ts';
import { readFigure } from '../../session/survey/read-rows.ts';
import { formatLength } from '../../units/format-length.ts';
import { bareUnit } from '../parts/length-style.ts';
import { TextEntry } from '../parts/text-entry.tsx';
import { useUnits } from '../parts/use-units.ts';

interface Props {
  readonly table: TableTemplate;
  readonly at: number;
  readonly row: TableRow;
  readonly onPut: (row: TableRow) => Done;
}

const TEXTS = [
  ['label', 'What it is'],
  ['who', 'Who'],
  ['when', 'When'],
  ['with', 'With what'],
  ['note', 'Note'],
] as const;

/** Rows that a line or a circle is fitted to; the others each stand for one thing. */
const isFitted = ({ name }: TableTemplate): boolean => name.endsWith('_readings');

/** A note without what was emptied; nothing at all when nothing is left. */
const without = (note: RowNote, key: keyof RowNote): RowNote | null => {
  const { [key]: _gone, ...rest } = note;
  return Object.keys(rest).length === 0 ? null : (rest as RowNote);
};

/** What stands beside a row's figures. */
export function RowNotes({ table, at, row, onPut }: Props) {
  const bare = bareUnit(useUnits());
  const note = row.note ?? {};
  const key = `${table.name} ${at} note`;
  const putText = (field: (typeof TEXTS)[number][0], typed: string): Done =>
    onPut({ ...row, note: typed.trim() === '' ? without(note, field) : { ...note, [field]: typed.trim() } });
  const putOffBy = (typed: string): Done => {
    const read = readFigure('Off by', typed, bare);
    if (!read.ok) return read;
    return onPut({
      ...row,
      note: read.value === null ? without(note, 'offBy') : { ...note, offBy: read.value },
    });
  };
  return (
    <div className="survey-notes">
      {TEXTS.map(([field, label]) => (
        <TextEntry
          key={field}
          label={label}
          value={note[field] ?? ''}
          draftKey={`${key} ${field}`}
          onPut={(typed) => putText(field, typed)}
        />
      ))}
      <TextEntry
        label={`Off by, ${bare}`}
        value={
          note.offBy === undefined ? '' : formatLength(note.offBy, { unit: bare }).replace(/ (?:mm|in)$/, '')
        }
        help={`Empty: ${formatLength(table.off_by, { unit: bare })}.${isFitted(table) ? ' A row that may be further off counts less.' : ''}`}
        draftKey={`${key} offBy`}
        decimal
        onPut={putOffBy}
      />
    </div>
  );
}
