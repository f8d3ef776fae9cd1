import { type ReactNode, useCallback, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { addTableRows, removeTableRow, type TableRow, tableRows } from '../../plan/edit/tables.ts';
import type { Plan } from '../../plan/plan.ts';
import { MOST_ROWS } from '../../plan/tables.ts';
import type { TableTemplate } from '../../plan/template.ts';
import type { Session } from '../../session/session.ts';
import { fewRowsSentence } from '../../session/survey/few-rows.ts';
import { fittedRows } from '../../session/survey/fitted-rows.ts';
import { Action } from '../parts/action.tsx';
import { useLook, usePlan, useSession } from '../use-session.ts';
import { FitPicture } from './fit-picture.tsx';
import { PasteRows } from './paste-rows.tsx';
import { RowPlace, showRow } from './row-place.tsx';
import { SurveyRow } from './survey-row.tsx';

interface Props {
  readonly table: TableTemplate;
  /** Its rows are heights and distances, which a line goes through. */
  readonly plumbed?: boolean;
  /** One row a screenful, with a picture of how it is read. */
  readonly oneByOne?: ((table: string, row: number) => ReactNode) | undefined;
}

/** The row that was taken away, and the plan that left: any later edit takes this note away. */
interface Gone {
  readonly at: number;
  readonly plan: Plan;
}

const EMPTY: readonly TableRow[] = [];

/** One of the survey's tables as rows one can put a thumb on. */
export function TablePanel({ table, plumbed = false, oneByOne }: Props) {
  const frame = useRef<HTMLElement>(null);
  const session = useSession();
  const plan = usePlan();
  const kept = useLook(
    useCallback((it: Session) => it.plan.tables.find((other) => other.name === table.name), [table]),
  );
  const rows = useMemo(
    () => (kept === undefined ? EMPTY : tableRows(session.plan, table.name)),
    [kept, session, table],
  );
  const [gone, setGone] = useState<Gone>();
  const [pasting, setPasting] = useState(false);
  /** The row and column that the focus goes to once they are there. */
  const [goal, setGoal] = useState<{ readonly row: number; readonly column: number }>();
  const isAlone = oneByOne !== undefined;
  const fit = useMemo(() => (plumbed ? fittedRows(rows, table) : undefined), [plumbed, rows, table]);
  const complete = rows.filter((it) => it.values.every((value) => value !== null)).length;
  const few = plumbed ? fewRowsSentence(complete) : undefined;
  const add = (more: readonly TableRow[]) =>
    session.edit(`Row of ${table.label}`, (it) => addTableRows(it, table.name, more));
  const remove = (at: number): void => {
    const done = session.edit(`Take away row ${at + 1}`, (it) => removeTableRow(it, table.name, at));
    if (done.ok) setGone({ at, plan: session.plan });
  };
  const addOne = (): void => {
    add([{ values: table.columns.map(() => null), note: null }]);
    setGoal({ row: rows.length + 1, column: 0 });
  };
  /** On to the next row, or to a new one once the last is full. */
  const goOn = (at: number, column: number): void => {
    const now = tableRows(session.plan, table.name);
    const missing = now[at]?.values.indexOf(null) ?? -1;
    if (at + 1 < now.length) setGoal({ row: at + 2, column });
    else if (missing >= 0) setGoal({ row: at + 1, column: missing });
    else if (now.length < MOST_ROWS && add([{ values: table.columns.map(() => null), note: null }]).ok) {
      setGoal({ row: now.length + 1, column });
    }
  };
  useLayoutEffect(() => {
    if (goal !== undefined) showRow(frame.current, goal.row, goal.column, isAlone);
  }, [goal, isAlone]);
  const aloneAt = (at: number) =>
    oneByOne === undefined
      ? undefined
      : {
          above: (
            <RowPlace table={table} row={at + 1} of={rows.length} picture={oneByOne(table.name, at + 1)} />
          ),
          below:
            at + 1 < rows.length ? (
              <button
                type="button"
                className="survey-next base-plain-button type-small"
                onClick={() => showRow(frame.current, at + 2)}
              >
                Next: row {at + 2}
              </button>
            ) : undefined,
        };
  const lines = rows.map((row, at) => (
    <SurveyRow
      key={at}
      table={table}
      at={at}
      row={row}
      fitted={fit?.rows.find((it) => it.at === at)}
      onRemove={() => remove(at)}
      onEntered={(column) => goOn(at, column)}
      alone={aloneAt(at)}
    />
  ));
  if (gone !== undefined && gone.plan === plan) {
    lines.splice(
      gone.at,
      0,
      <li key="gone" className="survey-gone">
        <span role="status">Row {gone.at + 1} is taken away.</span>
        <Action
          focused
          icon="undo"
          says={`Undo: bring row ${gone.at + 1} back`}
          onPress={() => session.undo()}
        >
          Undo
        </Action>
      </li>,
    );
  }
  return (
    <section className="survey-table" aria-label={table.label} data-table={table.name} ref={frame}>
      <h3 className="type-section">{table.label}</h3>
      <p className="type-small base-soft">{table.help}</p>
      {oneByOne !== undefined && rows.length === 0 && (
        <div className="survey-how">{oneByOne(table.name, 0)}</div>
      )}
      {few !== undefined && <p className="type-small">{few}</p>}
      {lines.length > 0 && <ol className="survey-rows">{lines}</ol>}
      <div className="survey-actions">
        <Action
          icon="plus"
          disabled={rows.length >= MOST_ROWS}
          says={`${rows.length === 0 ? 'First row' : 'Another row'}: ${table.label}`}
          onPress={addOne}
        >
          {rows.length === 0 ? 'First row' : 'Another row'}
        </Action>
        <Action expanded={pasting} says={`Paste rows: ${table.label}`} onPress={() => setPasting(!pasting)}>
          Paste rows
        </Action>
      </div>
      {pasting && <PasteRows table={table} onRows={add} onDone={() => setPasting(false)} />}
      {fit !== undefined && <FitPicture fit={fit} label={table.label} />}
    </section>
  );
}
