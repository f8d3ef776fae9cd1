import { memo } from 'react';
import type { LimitRow } from '../../session/compare-scenarios.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { limitTitle, roomWords, valueWords } from '../../workbook/limit-words.ts';
import { Mark, markedOf } from '../parts/mark.tsx';
import { StateWord } from '../parts/state-word.tsx';
import { useUnits } from '../parts/use-units.ts';
import { columnClass } from './column-class.ts';

interface Props {
  readonly row: LimitRow;
  readonly columns: readonly (string | null)[];
  readonly active: string | null;
  readonly picked: string | null;
}

function Standing({ limit }: { readonly limit: LimitAnswer }) {
  const units = useUnits();
  const { state } = limit.verdict;
  if (state === 'does not apply') return <span className="type-small base-soft">does not apply</span>;
  return (
    <span className="scenarios-standing">
      <span className="scenarios-state">
        <Mark small limit={markedOf(limit)} />
        <StateWord state={state} />
      </span>
      <span className="type-small">
        {state === 'no answer'
          ? (limit.why ?? '')
          : `${valueWords(limit, units)}, ${roomWords(limit, units)}`}
      </span>
    </span>
  );
}

/** One limit across the columns: mark, state, value and room. */
export const LimitLine = memo(function LimitLine({ row, columns, active, picked }: Props) {
  const any = row.answers.get(active) ?? [...row.answers.values()][0];
  const shown = row.answers.get(active);
  return (
    <tr data-limit={row.name} data-state={shown?.verdict.state} data-differs={row.differs ? '' : undefined}>
      <th scope="row" className="type-label">
        {any === undefined ? row.name : limitTitle(any)}
      </th>
      {columns.map((column) => {
        const limit = row.answers.get(column);
        return (
          <td key={column ?? ''} className={columnClass(column, picked)}>
            {limit === undefined ? (
              <span className="type-small base-soft">…</span>
            ) : (
              <Standing limit={limit} />
            )}
          </td>
        );
      })}
    </tr>
  );
});
