import { useId, useState } from 'react';
import type { TableRow } from '../../plan/edit/tables.ts';
import type { TableTemplate } from '../../plan/template.ts';
import type { Done } from '../../session/session.ts';
import { figuresIn, readRows } from '../../session/survey/read-rows.ts';
import { Action } from '../parts/action.tsx';
import { bareUnit } from '../parts/length-style.ts';
import { useUnits } from '../parts/use-units.ts';
import { useSession } from '../use-session.ts';
import { whenFiguresClear } from './when-figures-clear.ts';

interface Props {
  readonly table: TableTemplate;
  readonly onRows: (rows: readonly TableRow[]) => Done;
  readonly onDone: () => void;
}

/** Many rows at once, one to a line; nothing is put in while a line cannot be read. */
export function PasteRows({ table, onRows, onDone }: Props) {
  const id = useId();
  const bare = bareUnit(useUnits());
  const [text, setText] = useState('');
  const session = useSession();
  const [why, setWhy] = useState<string>();
  const put = (): void => {
    const readAs = (unit: 'mm' | 'in'): void => {
      const read = readRows(table, text, unit);
      const done: Done = read.ok ? onRows(read.rows) : read;
      if (done.ok) onDone();
      else setWhy(done.why);
    };
    const figures = figuresIn(table, text);
    whenFiguresClear(session, table, figures, bare, { put: readAs, leave: setWhy });
  };
  return (
    <div className="survey-paste">
      <label className="type-small" htmlFor={id}>
        One row a line: {table.columns.map((column) => column.label.toLowerCase()).join(', ')}, in {bare}
      </label>
      <textarea
        id={id}
        className="text-entry-box"
        rows={5}
        value={text}
        aria-invalid={why === undefined ? undefined : true}
        aria-describedby={why === undefined ? undefined : `${id}why`}
        onChange={(event) => setText(event.target.value)}
      />
      {why !== undefined && (
        <p className="survey-why type-small" id={`${id}why`} role="alert">
          {why}
        </p>
      )}
      <Action onPress={put}>Put these rows in</Action>
    </div>
  );
}
