import { memo } from 'react';
import type { InputRow } from '../../session/compare-scenarios.ts';
import { brief } from '../../workbook/limit-words.ts';
import { Quantity } from '../parts/quantity.tsx';
import { useUnits } from '../parts/use-units.ts';
import { columnClass } from './column-class.ts';

interface Props {
  readonly row: InputRow;
  readonly columns: readonly (string | null)[];
  readonly active: string | null;
  readonly picked: string | null;
}

/** One choice across the columns; what is a scenario's own and differs from the base is heavier. */
export const InputLine = memo(function InputLine({ row, columns, active, picked }: Props) {
  const units = useUnits();
  const { cell, values } = row;
  const base = values.get(null)?.value ?? null;
  const baseWords =
    base === null ? 'empty' : typeof base === 'number' ? brief(base, cell.unit, units) : String(base);
  return (
    <tr data-differs={row.differs ? '' : undefined}>
      <th scope="row" className="type-label">
        {cell.label}
        {cell.kind !== 'choice' && <span className="type-small base-soft"> set apart in a scenario</span>}
      </th>
      {columns.map((column) => {
        const it = values.get(column);
        const value = it?.value ?? null;
        const changed = column !== null && value !== base;
        return (
          <td
            key={column ?? ''}
            className={columnClass(column, picked)}
            data-changed-from-base={changed ? '' : undefined}
            {...(column === active
              ? { 'data-name': cell.name, 'data-value': value === null ? '' : String(value) }
              : {})}
          >
            {value === null ? (
              <span className="type-small">{it?.why ?? 'empty'}</span>
            ) : (
              <Quantity value={value} unit={cell.unit} />
            )}
            {changed && <span className="scenarios-base type-small">base: {baseWords}</span>}
          </td>
        );
      })}
    </tr>
  );
});
