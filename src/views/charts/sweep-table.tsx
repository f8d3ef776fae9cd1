import { useState } from 'react';
import type { Swept } from '../../studies/sweep.ts';

interface Props {
  readonly swept: Swept;
  readonly inputLabel: string;
  readonly resultLabel: string;
  readonly show: (value: number | null, name: string) => string;
}

/** The chart's numbers as a table, for those who read rather than look. */
export function SweepTable({ swept, inputLabel, resultLabel, show }: Props) {
  const [open, setOpen] = useState(false);
  const { input, results } = swept.ask;
  const result = results[0] ?? '';
  return (
    <details className="type-small" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>As a table</summary>
      {open && (
        <table className="sweep-table">
          <thead>
            <tr>
              <th scope="col">{inputLabel}</th>
              <th scope="col">{resultLabel}</th>
            </tr>
          </thead>
          <tbody>
            {swept.points.map((point) => (
              <tr key={point.x}>
                <th scope="row">{show(point.x, input)}</th>
                <td>{point.refused ?? show(point.values[0] ?? null, result)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </details>
  );
}
