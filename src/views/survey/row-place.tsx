import type { ReactNode } from 'react';
import type { TableTemplate } from '../../plan/template.ts';

interface Props {
  readonly table: TableTemplate;
  readonly row: number;
  readonly of: number;
  readonly picture: ReactNode;
}

/** What stands above a row that has the screen to itself: its place, and how it is read. */
export const RowPlace = ({ table, row, of, picture }: Props) => (
  <>
    <p className="survey-place type-small">
      <span>{table.label}</span>
      <span>
        Row {row} of {of}
      </span>
    </p>
    <div className="survey-how">{picture}</div>
  </>
);

/** Brings a row of a table to the top of the screen, with the focus in its first field. */
export function showRow(table: HTMLElement | null, row: number): void {
  const shown = table?.querySelector<HTMLElement>(`[data-row="${row}"]`);
  shown?.scrollIntoView({ block: 'start' });
  shown?.querySelector<HTMLElement>('[data-input]')?.focus({ preventScroll: true });
}
