import { memo, useState } from 'react';
import { pages } from '../../plan/book.ts';
import type { Page, ResultCell } from '../../plan/template.ts';
import { BackingText } from '../parts/backing-text.tsx';
import { Mark, markedOf } from '../parts/mark.tsx';
import { piecesOf } from '../parts/show.ts';
import { StateWord } from '../parts/state-word.tsx';
import { useAnswer, useChanged, useLimit, usePlan } from '../use-session.ts';
import './results-page.css';

/** A page of results: each with its value, its state where it is judged, and what stands behind it. */
export function ResultsPage({ page }: { readonly page: Page }) {
  const sections = pages.find((it) => it.page === page)?.sections ?? [];
  return (
    <div className="results" data-view="results">
      <h2 className="type-page">{page}</h2>
      <p className="type-small base-soft">Worked out from your readings and choices. Open a line to see how.</p>
      {sections.map((section) => (
        <section key={section.title} className="results-section">
          <h3 className="type-section">{section.title}</h3>
          <p className="type-small base-soft">{section.lead}</p>
          {section.cells.map((cell) => cell.kind === 'result' && <ResultRow key={cell.name} cell={cell} />)}
        </section>
      ))}
    </div>
  );
}

const ResultRow = memo(function ResultRow({ cell }: { readonly cell: ResultCell }) {
  const { units } = usePlan();
  const answer = useAnswer(cell.name);
  const limit = useLimit(cell.name);
  const changed = useChanged(cell.name);
  const [open, setOpen] = useState(false);
  const value = answer?.value ?? null;
  const pieces = value === null ? [] : piecesOf(value, cell.unit, units);
  return (
    <div className="result" data-changed={changed ? '' : undefined}>
      <button className="result-label type-label" type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
        {cell.label}
      </button>
      <span className="result-state">
        {limit !== undefined && limit.verdict.state !== 'does not apply' && (
          <>
            <Mark small limit={markedOf(limit)} />
            <StateWord state={limit.verdict.state} />
          </>
        )}
      </span>
      <span className="result-value type-value" data-name={cell.name} data-value={value === null ? '' : String(value)}>
        {answer === undefined ? '' : value === null ? '–' : pieces[0]?.figure}
      </span>
      <span className="result-unit type-small">
        {pieces[0]?.unit}
        {pieces[1] !== undefined && (
          <span className="result-inches">
            {pieces[1].figure} {pieces[1].unit}
          </span>
        )}
      </span>
      {answer?.why !== undefined && <p className="result-why type-small">{answer.why}</p>}
      {open && (
        <div className="result-open type-small">
          <p>{cell.help}</p>
          <BackingText formula={cell.formula} />
          <p className="base-soft">In formulas: {cell.name}</p>
        </div>
      )}
    </div>
  );
});
