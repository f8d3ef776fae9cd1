import type { ReactNode } from 'react';
import type { InputCell } from '../../plan/template.ts';

interface Props {
  readonly cell: InputCell;
  readonly section: string;
  /** The section's own words, before its first cell. */
  readonly lead: string | undefined;
  readonly at: number;
  readonly of: number;
  readonly picture: ReactNode;
  readonly next: InputCell | undefined;
}

const goTo = (name: string): void => {
  const field = document.querySelector<HTMLElement>(`[data-cell="${name}"]`);
  field?.scrollIntoView({ block: 'start' });
  field?.querySelector<HTMLElement>('[data-input]')?.focus({ preventScroll: true });
};

/** What stands round a field that has the screen to itself: its place, a picture, how to read it, the next one. */
export const Alone = ({ cell, section, lead, at, of, picture, next }: Props) => (
  <>
    <p className="cell-place type-small">
      <span>{section}</span>
      <span>
        {at} of {of}
      </span>
    </p>
    {picture !== undefined && <div className="cell-picture">{picture}</div>}
    <p className="cell-help type-small">
      {lead !== undefined && <span className="base-soft">{lead} </span>}
      {cell.help}
    </p>
    {next !== undefined && (
      <button
        type="button"
        className="cell-next base-plain-button type-small"
        onClick={() => goTo(next.name)}
      >
        Next: {next.short}
      </button>
    )}
  </>
);
