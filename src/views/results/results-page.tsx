import { memo, useState } from 'react';
import { pages } from '../../plan/book.ts';
import type { Page, ResultCell } from '../../plan/template.ts';
import { roomWords } from '../../workbook/limit-words.ts';
import { BackingText } from '../parts/backing-text.tsx';
import { bareUnit } from '../parts/length-style.ts';
import { Mark, markedOf } from '../parts/mark.tsx';
import { pointAt } from '../parts/pointed.ts';
import { Quantity } from '../parts/quantity.tsx';
import { shown } from '../parts/show.ts';
import { StateWord } from '../parts/state-word.tsx';
import { useUnits } from '../parts/use-units.ts';
import { useAnswer, useChanged, useLimit } from '../use-session.ts';
import './results-page.css';

interface Props {
  readonly page: Page;
  /** The result that is opened from the start. */
  readonly opened?: string | undefined;
}

/** A page of results: each with its value, its state where it is judged, and what stands behind it. */
export function ResultsPage({ page, opened }: Props) {
  const sections = (pages.find((it) => it.page === page)?.sections ?? []).filter(({ cells }) =>
    cells.some((cell) => cell.kind === 'result'),
  );
  return (
    <div className="results" data-view="results">
      <h2 className="type-page">{page}</h2>
      <p className="type-small base-soft">
        Worked out from your readings and choices: estimates. Open a line to see what stands behind it.
      </p>
      {sections.map(({ title, lead, cells }) => (
        <section key={title} className="results-section" aria-label={`${title}, worked out`}>
          <h3 className="type-section">{title}</h3>
          <p className="results-lead type-small base-soft">{lead}</p>
          {cells.map(
            (cell) =>
              cell.kind === 'result' && (
                <ResultRow
                  key={cell.name === opened ? `${cell.name} opened` : cell.name}
                  cell={cell}
                  opened={cell.name === opened}
                />
              ),
          )}
        </section>
      ))}
    </div>
  );
}

interface RowProps {
  readonly cell: ResultCell;
  readonly opened: boolean;
}

const ResultRow = memo(function ResultRow({ cell, opened }: RowProps) {
  const units = useUnits();
  const answer = useAnswer(cell.name);
  const limit = useLimit(cell.name);
  const changed = useChanged(cell.name);
  const [open, setOpen] = useState(opened);
  const value = answer?.value ?? null;
  const judged = limit !== undefined && limit.verdict.state !== 'does not apply' ? limit : undefined;
  const { name, label, unit, help, formula } = cell;
  return (
    <div
      className="result"
      data-cell={name}
      data-changed={changed ? '' : undefined}
      onPointerEnter={() => pointAt(name)}
      onPointerLeave={() => pointAt(undefined)}
    >
      <button className="result-line" type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span className="result-label type-label">{label}</span>
        <span
          className="result-value type-value"
          data-name={name}
          data-value={value === null ? '' : String(value)}
        >
          {answer !== undefined && value === null ? (
            <span className="result-none type-small">no answer</span>
          ) : (
            answer !== undefined && <Quantity value={value} unit={unit} aligned />
          )}
        </span>
        {judged !== undefined && (
          <span className="result-state type-small">
            <Mark small limit={markedOf(judged)} />
            <StateWord state={judged.verdict.state} />
            <span>{judged.graded ? roomWords(judged, units) : ''}</span>
          </span>
        )}
      </button>
      {answer?.why !== undefined && <p className="result-why type-small base-soft">{answer.why}</p>}
      {open && (
        <div className="result-open">
          <p className="type-small">{help}</p>
          <BackingText
            formula={formula}
            result={value === null ? undefined : shown(value, unit, bareUnit(units))}
          />
          <p className="type-small base-soft">In formulas: {name}</p>
        </div>
      )}
    </div>
  );
});
