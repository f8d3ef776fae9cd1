import { useId, useMemo, useState } from 'react';
import type { OwnCell } from '../../plan/plan.ts';
import { type Entry, entriesWith, found } from '../../session/reference/entries.ts';
import { Action } from '../parts/action.tsx';
import { EntryHelp } from '../parts/entry-help.tsx';

/** More than this are found by another word rather than by scrolling. */
const MOST = 40;

interface Props {
  readonly own: readonly OwnCell[];
  readonly onPick: (insert: string) => void;
}

interface LineProps {
  readonly entry: Entry;
  readonly open: boolean;
  readonly onToggle: () => void;
  readonly onPick: (insert: string) => void;
}

const Line = ({ entry, open, onToggle, onPick }: LineProps) => (
  <li className="own-cells-entry">
    <button type="button" className="own-cells-about" aria-expanded={open} onClick={onToggle}>
      <span className="own-cells-id type-label">{entry.id}</span>
      <span className="type-small base-soft">
        {entry.title}
        {entry.unit === '–' ? '' : `, ${entry.unit}`}
      </span>
    </button>
    <Action leavesFocus says={`Put in ${entry.id}`} onPress={() => onPick(entry.insert)}>
      Put in
    </Action>
    {open && (
      <div className="own-cells-help">
        <EntryHelp entry={entry} />
      </div>
    )}
  </li>
);

/** Names and functions to pick from: found by a word, explained when opened, put into the formula last written in. */
export function Picker({ own, onPick }: Props) {
  const id = useId();
  const [search, setSearch] = useState('');
  const [open, setOpen] = useState<string>();
  const all = useMemo(() => entriesWith(own), [own]);
  const hits = useMemo(() => found(all, search), [all, search]);
  return (
    <section className="own-cells-picker">
      <h3 className="type-section">Names and functions</h3>
      <label className="type-small base-soft" htmlFor={id}>
        Find one by a word, then put it into the formula you last wrote in
      </label>
      <input
        id={id}
        className="text-entry-box"
        type="search"
        autoComplete="off"
        value={search}
        onChange={(event) => setSearch(event.target.value)}
      />
      <ul className="own-cells-entries">
        {hits.slice(0, MOST).map((entry) => (
          <Line
            key={entry.id}
            entry={entry}
            open={open === entry.id}
            onToggle={() => setOpen(open === entry.id ? undefined : entry.id)}
            onPick={onPick}
          />
        ))}
      </ul>
      <p className="type-small base-soft" role="status">
        {hits.length > MOST
          ? `${MOST} of ${hits.length} shown: write a word to find the rest.`
          : `${hits.length} found.`}
      </p>
      <a className="action" href="#/reference">
        <span className="action-word">All names and functions, with their sources</span>
      </a>
    </section>
  );
}
