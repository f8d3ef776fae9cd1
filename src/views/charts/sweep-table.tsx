import { useState } from 'react';
import type { Plan } from '../../plan/plan.ts';
import { fails, standingOf } from '../../studies/standing.ts';
import type { Swept } from '../../studies/sweep.ts';
import type { Words } from '../../studies/words.ts';
import { labelOf, shown, unitOf } from '../parts/show.ts';

interface Props {
  readonly swept: Swept;
  readonly plan: Plan;
  readonly words: Words;
}

/** The chart's numbers as a table, for those who read rather than look: every value, and which limits fail there. */
export function SweepTable({ swept, plan, words }: Props) {
  const [isOpen, setOpen] = useState(false);
  const { input, results } = swept.ask;
  const say = (value: number | null, name: string): string =>
    value === null ? 'no answer' : shown(value, unitOf(name, plan), plan.units);
  return (
    <details className="sweep-twin type-small" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>As a table</summary>
      {isOpen && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
        <section className="sweep-table-frame" tabIndex={0} aria-label="Table of the chart">
          <table className="sweep-table">
            <thead>
              <tr>
                <th scope="col">{labelOf(input, plan)}</th>
                {results.map((name) => (
                  <th scope="col" key={name}>
                    {labelOf(name, plan)}
                  </th>
                ))}
                <th scope="col" className="sweep-table-words">
                  Limits that do not hold
                </th>
              </tr>
            </thead>
            <tbody>
              {swept.points.map((point) => (
                <tr key={point.x} aria-current={point.x === swept.ask.present ? 'true' : undefined}>
                  <th scope="row">
                    {say(point.x, input)}
                    {point.x === swept.ask.present && ', now'}
                  </th>
                  {results.map((name, i) => (
                    <td key={name}>{say(point.values[i] ?? null, name)}</td>
                  ))}
                  <td className="sweep-table-words">
                    {point.refused ??
                      (point.limits
                        .filter((it) => fails(standingOf(it)))
                        .map((it) => words.limit(it.name).short)
                        .join(', ') ||
                        'none')}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </details>
  );
}
