import { useState } from 'react';
import { intervalWords } from '../../studies/chance-words.ts';
import type { Mount, Proposals } from '../../studies/proposals/ask.ts';
import type { Words } from '../../studies/words.ts';

const percent = (share: number): string =>
  Number.isFinite(share)
    ? `${Math.round(share * 100)
        .toString()
        .replace('-', '−')} %`
    : 'none';

interface Row {
  readonly name: string;
  readonly mount: Mount;
}

interface Props {
  readonly found: Proposals;
  readonly words: Words;
}

/** The picture as a table: proposals, the plan as it stands, and the owner's scenarios. */
export function ProposalsTable({ found, words }: Props) {
  const [isOpen, setOpen] = useState(false);
  const rows: readonly Row[] = [
    ...found.proposals.map((mount, n) => ({ name: `Proposal ${n + 1}`, mount })),
    { name: 'Now', mount: found.present },
    ...found.scenarios,
  ];
  const bolts = words.cell('lower_bolt_length');
  return (
    <details className="proposals-twin type-small" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>As a table</summary>
      {isOpen && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
        <section className="proposals-table-frame" tabIndex={0} aria-label="Table of the proposals">
          <table className="proposals-table">
            <thead>
              <tr>
                <th scope="col">Mount</th>
                <th scope="col">Least room</th>
                <th scope="col" className="proposals-words">
                  Tightest limit
                </th>
                <th scope="col" className="proposals-words">
                  All limits met in
                </th>
                <th scope="col">Shims</th>
                <th scope="col">Lower and foot bolt</th>
                <th scope="col" className="proposals-words">
                  Limits not met
                </th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ name, mount }) => (
                <tr key={name}>
                  <th scope="row">{name}</th>
                  <td>{percent(mount.least)}</td>
                  <td className="proposals-words">
                    {mount.limit === undefined ? 'none' : words.limit(mount.limit).short}
                  </td>
                  <td className="proposals-words">
                    {mount.odds === undefined ? 'not worked out' : intervalWords(mount.odds)}
                  </td>
                  <td>{mount.shims}</td>
                  <td>{Number.isNaN(mount.bolts) ? 'no answer' : bolts.figure(mount.bolts)}</td>
                  <td className="proposals-words">
                    {mount.failing.map((it) => words.limit(it).short).join(', ') || 'none'}
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
