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

/** Puts the focus into a field of a row, with the row at the top of the screen where it has that to itself. */
export function showRow(table: HTMLElement | null, row: number, column = 0, toTop = true): void {
  const shown = table?.querySelector<HTMLElement>(`[data-row="${row}"]`);
  if (toTop) shown?.scrollIntoView({ block: 'start' });
  shown
    ?.querySelectorAll<HTMLElement>('.survey-figures [data-input]')
    [column]?.focus({ preventScroll: toTop });
}
