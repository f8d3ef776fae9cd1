import { useId, useState } from 'react';
import { pages } from '../../plan/book.ts';
import { setOwnLimit } from '../../plan/edit/own-limits.ts';
import { type LimitDraft, readLimit } from '../../session/own-cells/read-limit.ts';
import { Action } from '../parts/action.tsx';
import { unitOf } from '../parts/show.ts';
import { usePlan, useSession } from '../use-session.ts';

const EMPTY: LimitDraft = { result: '', low: '', high: '', near: '' };

const RESULTS = pages
  .map(({ page, sections }) => ({
    page,
    results: sections.flatMap((section) =>
      section.cells.filter((cell) => cell.kind === 'result' && cell.flag !== true),
    ),
  }))
  .filter(({ results }) => results.length > 0);

/** Sets a limit on a result or own cell. */
export function NewLimit() {
  const session = useSession();
  const plan = usePlan();
  const id = useId();
  const [draft, setDraft] = useState(EMPTY);
  const [why, setWhy] = useState<string>();
  const unit = unitOf(draft.result, plan);
  const shownUnit = unit === 'mm' && plan.units === 'in' ? 'in' : unit;

  const add = (): void => {
    const done = session.edit('New limit', (it) => {
      const read = readLimit(it, draft);
      return read.ok ? setOwnLimit(it, read.limit) : read;
    });
    setWhy(done.ok ? undefined : done.why);
    if (done.ok) setDraft(EMPTY);
  };
  const field = (key: 'low' | 'high' | 'near', words: string) => (
    <span className="text-entry">
      <label className="text-entry-label type-small" htmlFor={id + key}>
        {words}
        {shownUnit === '–' || shownUnit === '' ? '' : `, ${shownUnit}`}
      </label>
      <input
        id={id + key}
        className="text-entry-box"
        type="text"
        autoComplete="off"
        aria-describedby={why === undefined ? undefined : `${id}why`}
        value={draft[key]}
        onChange={(event) => setDraft({ ...draft, [key]: event.target.value })}
      />
    </span>
  );
  return (
    <form
      className="own-cells-limit"
      aria-label="A new limit of your own"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <span className="text-entry own-cells-judged">
        <label className="text-entry-label type-small" htmlFor={`${id}result`}>
          Result that it judges
        </label>
        <select
          id={`${id}result`}
          className="text-entry-box"
          value={draft.result}
          onChange={(event) => setDraft({ ...draft, result: event.target.value })}
        >
          <option value="">choose one</option>
          {plan.ownCells.length > 0 && (
            <optgroup label="Own cells">
              {plan.ownCells.map((cell) => (
                <option key={cell.name} value={cell.name}>
                  {cell.label}
                </option>
              ))}
            </optgroup>
          )}
          {RESULTS.map(({ page, results }) => (
            <optgroup key={page} label={page}>
              {results.map((cell) => (
                <option key={cell.name} value={cell.name}>
                  {cell.label}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </span>
      {field('low', 'At least')}
      {field('high', 'At most')}
      {field('near', 'Near within')}
      <Action plate submits>
        Set the limit
      </Action>
      {why !== undefined && (
        <p className="own-cells-why type-small" id={`${id}why`} role="alert">
          {why}
        </p>
      )}
    </form>
  );
}
