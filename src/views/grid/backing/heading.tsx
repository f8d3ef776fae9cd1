import { useCallback } from 'react';
import { Quantity } from '../../parts/quantity.tsx';
import { useLook } from '../../use-session.ts';

interface Props {
  readonly id?: string;
  /** Where in the workbook the cell stands. */
  readonly place: string;
  readonly label: string;
  readonly name: string;
  readonly unit: string;
}

/** What the chosen cell is called, where it stands and what it holds. */
export function Heading({ id, place, label, name, unit }: Props) {
  const value = useLook(useCallback((session) => session.value(name), [name]));
  const why = useLook(useCallback((session) => session.answer(name)?.why, [name]));
  return (
    <header className="grid-heading">
      <p className="type-small base-soft">{place}</p>
      <h2 className="type-section" id={id}>
        {label}
      </h2>
      {value !== null && (
        <p className="type-value">
          <Quantity value={value} unit={unit} />
        </p>
      )}
      {value === null && why !== undefined && <p className="type-small grid-why">{why}</p>}
    </header>
  );
}
