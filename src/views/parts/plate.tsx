import type { ReactNode } from 'react';
import './plate.css';

interface Props {
  /** What is wrong, in a word or two. */
  readonly says: string;
  /** Why, as sentences. */
  readonly why: string;
  /** The doors out. */
  readonly children?: ReactNode;
}

/** An ink plate above the title block, for what must not be overlooked: what is wrong, why, and the doors out. */
export const Plate = ({ says, why, children }: Props) => (
  <div className="plate base-on-ink" role="alert">
    <p className="type-small">
      <strong>{says}</strong> {why}
    </p>
    {children !== undefined && <span className="plate-doors">{children}</span>}
  </div>
);
