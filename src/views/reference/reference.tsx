import { useDeferredValue, useId, useMemo, useState } from 'react';
import { type Entry, entriesWith, found } from '../../session/reference/entries.ts';
import { type Answered, questionsFound } from '../../session/reference/questions.ts';
import type { Session } from '../../session/session.ts';
import { EntryHelp } from '../parts/entry-help.tsx';
import { useLook, useSession } from '../use-session.ts';
import './reference.css';

const KINDS: readonly (readonly [Entry['kind'], string, string])[] = [
  ['own', 'Your own cells', 'Made by you on the page Own cells.'],
  [
    'cell',
    'Named cells',
    'Every reading, choice and result of the workbook, by the name it has in formulas.',
  ],
  [
    'function',
    'Functions of the workbook',
    'The sums behind the results. Arguments are set apart by semicolons.',
  ],
  ['table', 'Tables of the survey', 'They stand, by themselves, where a function takes a table.'],
  ['room', 'Room of each limit', 'The distance left to a limit has a name of its own.'],
  ['standard', 'Functions of the formula standard', 'Shared with every workbook after the same standard.'],
];

const ownCells = (session: Session) => session.plan.ownCells;

const Item = ({ entry }: { readonly entry: Entry }) => (
  <li className="reference-item" data-entry={entry.id}>
    <p className="reference-head">
      <span className="reference-name type-label">{entry.id}</span>
      <span className="reference-title type-small">{entry.title}</span>
      <span className="reference-unit type-small base-soft">{entry.unit === '–' ? '' : entry.unit}</span>
    </p>
    <EntryHelp entry={entry} />
  </li>
);

/** Questions of the work, each with a way to its answer. */
const Questions = ({ questions }: { readonly questions: readonly Answered[] }) => (
  <section className="reference-section">
    <h3 className="type-section">Questions of the work</h3>
    <ul>
      {questions.map(({ title, href, place }) => (
        <li key={`${place} ${title}`} className="reference-item">
          <p>
            {title}: <a href={href}>{place}</a>
          </p>
        </li>
      ))}
    </ul>
  </section>
);

/** Everything a formula may name: cells with their units and where they come from, functions with their examples. */
export function Reference() {
  const session = useSession();
  const own = useLook(ownCells);
  const id = useId();
  const [search, setSearch] = useState('');
  const asked = useDeferredValue(search);
  const all = useMemo(() => entriesWith(own), [own]);
  const hits = useMemo(() => found(all, asked), [all, asked]);
  const questions = useMemo(() => questionsFound(asked, (name) => session.value(name)), [asked, session]);
  return (
    <div className="reference" data-view="reference">
      <h2 className="type-page">Names and functions</h2>
      <p className="type-small base-soft">
        All that a formula may use. Units are those of the engine: mm, degrees, N, MPa, knots.
      </p>
      <div className="reference-search">
        <label className="type-small base-soft" htmlFor={id}>
          Find a name, a label, a word of a formula or of a question
        </label>
        <input
          id={id}
          className="reference-box"
          type="search"
          autoComplete="off"
          value={search}
          onChange={(event) => setSearch(event.target.value)}
        />
        <p className="type-small base-soft" role="status">
          {hits.length} of {all.length}
        </p>
      </div>
      {questions.length > 0 && <Questions questions={questions} />}
      {hits.length === 0 && questions.length === 0 && (
        <p>Nothing here has “{asked}” in it. Try one word of it, or part of a word.</p>
      )}
      {KINDS.map(([kind, title, lead]) => {
        const entries = hits.filter((it) => it.kind === kind);
        if (entries.length === 0) return null;
        return (
          <section key={kind} className="reference-section">
            <h3 className="type-section">{title}</h3>
            <p className="type-small base-soft">{lead}</p>
            <ul>
              {entries.map((entry) => (
                <Item key={entry.id} entry={entry} />
              ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}
