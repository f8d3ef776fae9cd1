import { useCallback, useState } from 'react';
import { deleteOwnCell } from '../../../plan/edit.ts';
import type { Session } from '../../../session/session.ts';
import { Action } from '../../parts/action.tsx';
import { BackingText } from '../../parts/backing-text.tsx';
import { useLook, useSession } from '../../use-session.ts';
import type { Column } from '../columns.ts';
import type { OwnRow } from '../rows.ts';
import { Heading } from './heading.tsx';
import { JudgedBy } from './judged-by.tsx';
import { RefusedText } from './refused-text.tsx';

interface Props {
  readonly row: OwnRow;
  readonly column: Column;
}

/** What stands behind a cell that the owner made. */
export function OwnBacking({ row, column }: Props) {
  const session = useSession();
  const { name } = row;
  const own = useLook(
    useCallback((it: Session) => it.plan.ownCells.find((cell) => cell.name === name), [name]),
  );
  const [why, setWhy] = useState<string>();
  if (own === undefined) return null;
  const remove = (): void => {
    const done = session.edit(`Delete ${own.label}`, (plan) => deleteOwnCell(plan, name));
    setWhy(done.ok ? undefined : done.why);
  };
  return (
    <>
      <Heading place="Own cells" label={own.label} name={name} unit={own.unit} />
      <RefusedText row={row} column={column} unit={own.unit} />
      {own.note !== undefined && <p className="type-small">{own.note}</p>}
      <JudgedBy result={name} />
      {own.formula !== undefined && <BackingText formula={own.formula} />}
      <p className="type-small base-soft">In formulas: {name}</p>
      <Action onPress={remove} says={`Delete ${own.label}`}>
        Delete this cell
      </Action>
      {why !== undefined && (
        <p className="type-small grid-why" role="alert">
          {why}
        </p>
      )}
    </>
  );
}
