import { useCallback, useId, useSyncExternalStore } from 'react';
import type { Session } from '../../../session/session.ts';
import { Refused } from '../../parts/refused.tsx';
import { piecesOf } from '../../parts/show.ts';
import { useUnits } from '../../parts/use-units.ts';
import { useLook, useReading, useSession } from '../../use-session.ts';
import type { Column } from '../columns.ts';
import { dropText, keptText, subscribeToRows } from '../kept-text.ts';
import type { CellRow } from '../rows.ts';

interface Props {
  readonly row: CellRow;
  readonly column: Column;
  readonly unit: string;
}

/** Why the text in the chosen cell was refused, which value is still in use, and the way back to it. */
export function RefusedText({ row, column, unit }: Props) {
  const session = useSession();
  const units = useUnits();
  const id = useId();
  const draft = useSyncExternalStore(
    useCallback((listener) => subscribeToRows(session, listener), [session]),
    () => keptText(session, row, column),
  );
  const value = useLook(useCallback((it: Session) => it.value(row.name), [row.name]));
  const offBy = useReading(row.name)?.offBy ?? null;
  if (draft?.why === undefined) return null;
  const inUse = column === 'offBy' ? offBy : column === 'value' ? value : null;
  const [piece] = inUse === null ? [] : piecesOf(inUse, unit, units);
  return (
    <Refused
      id={id}
      why={draft.why}
      figure={piece?.figure ?? ''}
      unit={piece?.unit ?? ''}
      onDrop={() => dropText(session, row, column)}
    />
  );
}
