import { type ReactNode, useMemo } from 'react';
import { pages } from '../../plan/book.ts';
import type { InputCell, Page } from '../../plan/template.ts';
import type { Session } from '../../session/session.ts';
import { useLook } from '../use-session.ts';
import { Alone } from './alone.tsx';
import { byHeight } from './by-height.ts';
import { CellRow } from './cell-row.tsx';
import './form-page.css';

interface Props {
  readonly page: Page;
  /** One input a screenful, with a small drawing of what is measured. */
  readonly oneByOne?: ((cell: InputCell) => ReactNode) | undefined;
}

const activeOf = (session: Session): string | null => session.plan.active;

const isInput = (cell: { kind: string }): cell is InputCell => cell.kind !== 'result';

/** Where an edit on this page goes, said where it happens. */
function goesTo(page: Page, active: string | null): string {
  if (page !== 'Mount') return 'What you enter here holds for every scenario.';
  return active === null
    ? 'Choices change the base values, from which every scenario starts.'
    : `Choices change the scenario “${active}” alone.`;
}

/** A page of inputs as an ordinary form, in the order one meets things at the boat. */
export function FormPage({ page, oneByOne }: Props) {
  const active = useLook(activeOf);
  const sections = useMemo(
    () =>
      (pages.find((it) => it.page === page)?.sections ?? [])
        .map(({ title, lead, cells }) => ({ title, lead, cells: byHeight(cells.filter(isInput)) }))
        .filter(({ cells }) => cells.length > 0),
    [page],
  );
  const all = useMemo(() => sections.flatMap((it) => it.cells), [sections]);
  return (
    <div className={oneByOne === undefined ? 'form' : 'form form-alone'} data-view="form">
      <h2 className="type-page">{page === 'Mount' ? 'Your choices' : page}</h2>
      <p className="type-small base-soft">{goesTo(page, active)}</p>
      {sections.map(({ title, lead, cells }) => (
        <section key={title} className="form-section" aria-label={title}>
          <h3 className="type-section">{title}</h3>
          <p className="form-lead type-small base-soft">{lead}</p>
          {cells.map((cell, nth) => {
            const at = all.indexOf(cell);
            return oneByOne === undefined ? (
              <CellRow key={cell.name} cell={cell} />
            ) : (
              <CellRow
                key={cell.name}
                cell={cell}
                alone={
                  <Alone
                    cell={cell}
                    section={title}
                    lead={nth === 0 ? lead : undefined}
                    at={at + 1}
                    of={all.length}
                    picture={oneByOne(cell)}
                    next={all[at + 1]}
                  />
                }
              />
            );
          })}
        </section>
      ))}
    </div>
  );
}
