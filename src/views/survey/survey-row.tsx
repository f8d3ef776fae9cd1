import { type ReactNode, useState } from 'react';
import { setTableRow, type TableRow } from '../../plan/edit/tables.ts';
import type { TableTemplate } from '../../plan/template.ts';
import { keptDraftsOf } from '../../session/kept-drafts.ts';
import type { Done } from '../../session/session.ts';
import type { FittedRow } from '../../session/survey/fitted-rows.ts';
import { readFigure } from '../../session/survey/read-rows.ts';
import { formatLength } from '../../units/format-length.ts';
import { bareUnit } from '../parts/length-style.ts';
import { TextEntry } from '../parts/text-entry.tsx';
import { useUnits } from '../parts/use-units.ts';
import { useSession } from '../use-session.ts';
import { RowNotes } from './row-notes.tsx';
import { useRun } from './use-run.ts';
import { whenFiguresClear } from './when-figures-clear.ts';

interface Props {
  readonly table: TableTemplate;
  readonly at: number;
  readonly row: TableRow;
  readonly fitted: FittedRow | undefined;
  readonly onRemove: () => void;
  /** Enter was pressed in a figure, which was taken; the focus goes on from there. */
  readonly onEntered: (column: number) => void;
  /** The row has the screen to itself: what stands above its figures, and what comes after it. */
  readonly alone?: { readonly above: ReactNode; readonly below: ReactNode } | undefined;
}

/** A figure as one would type it again. */
const typedOf = (value: number | null, bare: 'mm' | 'in'): string =>
  value === null ? '' : bare === 'mm' ? String(value) : formatLength(value, { unit: 'in' });

/** One row: its figures, what its distance off the line says, and, opened, who read it, when and with what. */
export function SurveyRow({ table, at, row, fitted, onRemove, onEntered, alone }: Props) {
  const session = useSession();
  const bare = bareUnit(useUnits());
  const [open, setOpen] = useState(false);
  const run = useRun();
  const keyFor = (k: number): string => `${table.name} ${at} ${table.columns[k]?.name}`;
  const name = row.note?.label ?? `row ${at + 1}`;
  const put = (next: TableRow): Done =>
    session.edit(`Row ${at + 1} of ${table.label}`, (plan) => setTableRow(plan, table.name, at, next));
  const putFigure = (k: number, typed: string): Done => {
    const column = table.columns[k];
    const putIn = (unit: 'mm' | 'in'): Done => {
      const read = readFigure(column?.label ?? '', typed, unit);
      return read.ok ? put({ ...row, values: row.values.map((it, i) => (i === k ? read.value : it)) }) : read;
    };
    let done: Done = { ok: true };
    whenFiguresClear(session, table, [{ column: k, typed }], bare, {
      put: (unit) => {
        done = putIn(unit);
      },
      leave: (why) => keptDraftsOf(session).keep(keyFor(k), typed, why),
    });
    return done;
  };
  return (
    <li
      className={alone === undefined ? 'survey-row' : 'survey-row survey-alone'}
      data-row={at + 1}
      data-suspicious={fitted?.suspicious ? '' : undefined}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) run.left();
      }}
    >
      {alone === undefined ? (
        <span className="survey-number type-small" aria-hidden="true">
          {at + 1}
        </span>
      ) : (
        alone.above
      )}
      <div className="survey-figures" data-columns={table.columns.length}>
        {table.columns.map((column, k) => (
          <TextEntry
            key={column.name}
            label={`${column.label}, ${bare}`}
            value={typedOf(row.values[k] ?? null, bare)}
            labelSpoken={at > 0 && alone === undefined}
            {...(alone === undefined ? {} : { help: column.help })}
            draftKey={keyFor(k)}
            input={`${table.name}.${at + 1}.${column.name}`}
            decimal
            onPut={(typed) => putFigure(k, typed)}
            onFocused={() => run.came(k)}
            onEntered={() => onEntered(run.start())}
          />
        ))}
      </div>
      <p className="survey-said type-small">
        {row.note?.label !== undefined && <span>{row.note.label}</span>}
        {fitted !== undefined && (
          <span className={fitted.suspicious ? 'survey-suspect' : 'base-soft'}>
            {formatLength(Math.abs(fitted.off), { unit: bare, ...(bare === 'mm' ? { decimals: 1 } : {}) })}{' '}
            off the line{fitted.suspicious ? ', far outside the rest: measure it again' : ''}
          </span>
        )}
        {row.values.some((it) => it === null) && <span className="base-soft">not complete, so not used</span>}
        <button
          type="button"
          className="base-plain-button survey-more"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {open ? 'less' : 'more'}
          <span className="base-spoken"> on {name}</span>
        </button>
        <button type="button" className="base-plain-button survey-more" onClick={onRemove}>
          take away<span className="base-spoken"> {name}</span>
        </button>
      </p>
      {open && <RowNotes table={table} at={at} row={row} onPut={put} />}
      {alone?.below}
    </li>
  );
}
