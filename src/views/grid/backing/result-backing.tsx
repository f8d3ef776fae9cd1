import { useCallback } from 'react';
import type { ResultCell } from '../../../plan/template.ts';
import type { Session } from '../../../session/session.ts';
import { BackingText } from '../../parts/backing-text.tsx';
import { shown } from '../../parts/show.ts';
import { useUnits } from '../../parts/use-units.ts';
import { useLook } from '../../use-session.ts';
import type { BookRow } from '../rows.ts';
import { Heading } from './heading.tsx';
import { JudgedBy } from './judged-by.tsx';

interface Props {
  readonly row: BookRow;
  readonly cell: ResultCell;
}

/** What stands behind a number that is worked out. */
export function ResultBacking({ row, cell }: Props) {
  const units = useUnits();
  const value = useLook(useCallback((session: Session) => session.value(cell.name), [cell.name]));
  return (
    <>
      <Heading place={`${row.page} · ${row.section}`} label={cell.label} name={cell.name} unit={cell.unit} />
      <p className="type-small">{cell.help}</p>
      <JudgedBy result={cell.name} />
      <BackingText
        formula={cell.formula}
        result={value === null ? undefined : shown(value, cell.unit, units === 'in' ? 'in' : 'mm')}
      />
      <p className="type-small base-soft">In formulas: {cell.name}</p>
    </>
  );
}
