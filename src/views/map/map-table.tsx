import { useState } from 'react';
import type { Plan } from '../../plan/plan.ts';
import { MapReader } from '../../studies/map/look-at.ts';
import type { Mapped } from '../../studies/map/map.ts';
import type { Words } from '../../studies/words.ts';
import { labelOf } from '../parts/show.ts';

/** Most values told along one side. */
const MOST = 11;

/** At most so many of the values, both ends among them. */
function some(values: Float64Array): readonly number[] {
  if (values.length <= MOST) return [...values];
  return Array.from(
    { length: MOST },
    (_, i) => values[Math.round((i * (values.length - 1)) / (MOST - 1))] as number,
  );
}

interface Props {
  readonly mapped: Mapped;
  readonly plan: Plan;
  readonly words: Words;
  readonly result: string;
}

/** The map as a table, for those who read rather than look: what fails first at each pair of values, and the result. */
export function MapTable({ mapped, plan, words, result }: Props) {
  const [isOpen, setOpen] = useState(false);
  const { x, y } = mapped.ask;
  const [across, up] = [words.cell(x.input), words.cell(y.input)];
  const drawn = words.cell(result);
  const reader = new MapReader(mapped);
  const say = (a: number, b: number): string => {
    const ground = reader.ground(a, b);
    const value = reader.read(mapped.results[0] ?? [], a, b);
    const told = Number.isNaN(value) ? 'no answer' : drawn.figure(value);
    if (ground.is === 'allowed') return `all hold, ${told}`;
    if (ground.is === 'refused') return 'cannot be';
    const more = ground.more === 0 ? '' : ` and ${ground.more} more`;
    return `${words.limit(ground.limit).short}${more}, ${told}`;
  };
  return (
    <details className="map-twin type-small" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>As a table</summary>
      {isOpen && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
        <section className="map-table-frame" tabIndex={0} aria-label="Table of the map">
          <table className="map-table">
            <caption>
              {labelOf(y.input, plan)} down, {labelOf(x.input, plan).toLowerCase()} across: the limit that is
              furthest outside, and {drawn.short}.
            </caption>
            <thead>
              <tr>
                <td />
                {some(mapped.xs).map((value) => (
                  <th scope="col" key={value}>
                    {across.figure(value)}
                    {value === x.present && ', now'}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {[...some(mapped.ys)].reverse().map((b) => (
                <tr key={b}>
                  <th scope="row">
                    {up.figure(b)}
                    {b === y.present && ', now'}
                  </th>
                  {some(mapped.xs).map((a) => (
                    <td key={a}>{say(a, b)}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </details>
  );
}
