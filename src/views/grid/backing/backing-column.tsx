import type { KeyboardEvent, MouseEvent, Ref } from 'react';
import { useLook } from '../../use-session.ts';
import { isCellRow } from '../rows.ts';
import type { Chosen } from '../table/chosen.ts';
import { InputBacking } from './input-backing.tsx';
import { OwnBacking } from './own-backing.tsx';
import { ResultBacking } from './result-backing.tsx';
import './backing-column.css';

interface Props {
  readonly ref: Ref<HTMLElement>;
  readonly chosen: Chosen | undefined;
  /** What became of several texts that were put in at once. */
  readonly told: string;
  /** Escape leads back to the table. */
  readonly onLeave: () => void;
  readonly onFollow: (event: MouseEvent) => void;
}

/** Beside the table: what stands behind the chosen cell. */
export function BackingColumn({ ref, chosen, told, onLeave, onFollow }: Props) {
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    event.preventDefault();
    onLeave();
  };
  return (
    <section
      className="grid-backing"
      data-view="backing"
      aria-label="Backing of the chosen cell"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and the table's keys lead here
      tabIndex={0}
      ref={ref}
      onKeyDown={onKeyDown}
      onClick={onFollow}
    >
      <p className="grid-told type-small" role="status">
        {told}
      </p>
      <Behind chosen={chosen} />
    </section>
  );
}

function Behind({ chosen }: { readonly chosen: Chosen | undefined }) {
  const row = chosen?.row;
  const isThere = useLook(
    (session) => row?.kind !== 'own' || session.plan.ownCells.some((cell) => cell.name === row.name),
  );
  if (chosen === undefined || row === undefined || !isThere || !isCellRow(row)) {
    return (
      <p className="type-small base-soft">
        {row?.kind === 'new'
          ? 'A cell of your own holds a number or a formula over names. Type what it is called; its value and unit come after.'
          : 'Choose a cell to see where it comes from and how it is worked out.'}
      </p>
    );
  }
  const { column } = chosen;
  if (row.kind === 'own') return <OwnBacking key={row.name} row={row} column={column} />;
  if (row.cell.kind === 'result') return <ResultBacking key={row.name} row={row} cell={row.cell} />;
  return <InputBacking key={row.name} row={row} cell={row.cell} column={column} />;
}
