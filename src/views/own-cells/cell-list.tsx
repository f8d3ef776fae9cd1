import { useState } from 'react';
import { deleteOwnCell } from '../../plan/edit/own-cells.ts';
import type { OwnCell, Plan } from '../../plan/plan.ts';
import { Action } from '../parts/action.tsx';
import { usePlan, useSession } from '../use-session.ts';
import { OwnCellRow } from './own-cell-row.tsx';
import { StretchDoors, useStretch } from './stretch.tsx';

interface Props {
  readonly cells: readonly OwnCell[];
  readonly onFormula: (box: HTMLInputElement) => void;
}

/** What was just deleted, and the plan it left: any later edit takes this note away. */
interface Deleted {
  readonly label: string;
  readonly place: number;
  readonly plan: Plan;
}

/** What could not be deleted, and why, as long as the plan stays as it was. */
interface Kept {
  readonly name: string;
  readonly why: string;
  readonly plan: Plan;
}

/** The own cells, a stretch of them at a time; undo stands where one was deleted, and a refusal where one could not be. */
export function CellList({ cells, onFormula }: Props) {
  const session = useSession();
  const plan = usePlan();
  const [gone, setGone] = useState<Deleted>();
  const [kept, setKept] = useState<Kept>();
  const stretch = useStretch(cells.length);

  const onDelete = (cell: OwnCell): void => {
    const place = cells.indexOf(cell);
    const done = session.edit(`Delete ${cell.label}`, (it) => deleteOwnCell(it, cell.name));
    setKept(done.ok ? undefined : { name: cell.name, why: done.why, plan: session.plan });
    if (done.ok) setGone({ label: cell.label, place, plan: session.plan });
  };
  const rows = cells
    .slice(stretch.from, stretch.to)
    .map((cell) => (
      <OwnCellRow
        key={cell.name}
        cell={cell}
        onFormula={onFormula}
        onDelete={() => onDelete(cell)}
        whyKept={kept?.name === cell.name && kept.plan === plan ? kept.why : undefined}
      />
    ));
  if (gone !== undefined && gone.plan === plan) {
    rows.splice(
      gone.place - stretch.from,
      0,
      <li key=" " className="own-cells-gone">
        <span role="status">{gone.label} is deleted.</span>
        <Action focused icon="undo" says={`Undo: bring ${gone.label} back`} onPress={() => session.undo()}>
          Undo
        </Action>
      </li>,
    );
  }
  if (rows.length === 0) return <p className="own-cells-none">There is none yet.</p>;
  return (
    <>
      <ul className="own-cells-list">{rows}</ul>
      <StretchDoors stretch={stretch} />
    </>
  );
}
