import { type ReactNode, useMemo } from 'react';
import { pages } from '../../plan/book.ts';
import type { InputCell, Page } from '../../plan/template.ts';
import { usePlan } from '../use-session.ts';
import { CellRow } from './cell-row.tsx';
import './form-page.css';

interface Props {
  readonly page: Page;
  readonly picture?: (cell: InputCell) => ReactNode;
  readonly onPoint?: (name: string | undefined) => void;
}

const isInput = (cell: { kind: string }): cell is InputCell => cell.kind !== 'result';

/** Where an edit on this page goes, said where it happens. */
function goesTo(page: Page, active: string | null): string {
  if (page !== 'Mount') return 'What you enter here holds for every scenario.';
  return active === null
    ? 'Choices change the base values, from which every scenario starts.'
    : `Choices change the scenario “${active}” alone.`;
}

/** A page of inputs as an ordinary form, in the order one meets things at the boat. */
export function FormPage({ page, picture, onPoint }: Props) {
  const { active } = usePlan();
  const sections = useMemo(() => pages.find((it) => it.page === page)?.sections ?? [], [page]);
  return (
    <div className="form" data-view="form">
      <h2 className="type-page form-title">{page === 'Mount' ? 'Your choices' : page}</h2>
      <p className="type-small base-soft">{goesTo(page, active)}</p>
      {sections.map((section) => (
        <section key={section.title} className="form-section">
          <h3 className="type-section">{section.title}</h3>
          <p className="type-small base-soft">{section.lead}</p>
          {section.cells.filter(isInput).map((cell) => (
            <CellRow key={cell.name} cell={cell} picture={picture?.(cell)} onPoint={onPoint} />
          ))}
        </section>
      ))}
    </div>
  );
}
