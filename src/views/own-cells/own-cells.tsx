import { useRef } from 'react';
import { insertInto } from '../../session/own-cells/insert-into.ts';
import type { Session } from '../../session/session.ts';
import { useLook } from '../use-session.ts';
import { CellList } from './cell-list.tsx';
import { NewCell } from './new-cell.tsx';
import { OwnLimits } from './own-limits.tsx';
import { Picker } from './picker.tsx';
import { putText } from './put-text.ts';
import './own-cells.css';

const ownCells = (session: Session) => session.plan.ownCells;

/** Cells and limits of the owner's own, and what formulas may be made of. */
export function OwnCells() {
  const own = useLook(ownCells);
  // The formula that was last written in: a name picked from the list goes there.
  const box = useRef<HTMLInputElement>(null);
  const newBox = useRef<HTMLInputElement>(null);
  const onFormula = (it: HTMLInputElement): void => {
    box.current = it;
  };
  const onPick = (insert: string): void => {
    const into = box.current?.isConnected ? box.current : newBox.current;
    if (into === null) return;
    const end = into.value.length;
    const { text, caret } = insertInto(
      into.value,
      into.selectionStart ?? end,
      into.selectionEnd ?? end,
      insert,
    );
    putText(into, text, caret);
  };
  return (
    <div className="own-cells" data-view="own-cells">
      <h2 className="type-page">Own cells</h2>
      <p className="type-small base-soft">
        A number, or a formula over any cell of the workbook. An own cell counts in no limit until you set one
        on it below.
      </p>
      <CellList cells={own} onFormula={onFormula} />
      <NewCell onFormula={onFormula} contentBox={newBox} />
      <Picker own={own} onPick={onPick} />
      <OwnLimits />
    </div>
  );
}
