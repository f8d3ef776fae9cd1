import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { filterLabels, type Labelled } from './filter-labels.ts';
import './chooser.css';

interface Props {
  /** What is being chosen, for a screen reader. */
  readonly says: string;
  /** The name of what is chosen now. */
  readonly value: string | undefined;
  /** What the button reads. */
  readonly children: string;
  readonly options: readonly Labelled[];
  readonly onPick: (name: string) => void;
}

/** A word in a line that opens a list with a field to filter it by. */
export function Chooser({ says, value, children, options, onPick }: Props) {
  const [isOpen, setOpen] = useState(false);
  const [typed, setTyped] = useState('');
  const [active, setActive] = useState(0);
  const button = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const id = useId();
  const shown = filterLabels(options, typed);
  const at = Math.min(active, shown.length - 1);

  const open = (): void => {
    setTyped('');
    setActive(
      Math.max(
        0,
        options.findIndex((it) => it.name === value),
      ),
    );
    setOpen(true);
  };
  const close = (): void => {
    setOpen(false);
    button.current?.focus();
  };
  const pick = (name: string): void => {
    onPick(name);
    close();
  };
  const move = (to: number): void => {
    const next = Math.min(shown.length - 1, Math.max(0, to));
    setActive(next);
    list.current?.children[next]?.scrollIntoView({ block: 'nearest' });
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const moves: Readonly<Record<string, number>> = {
      ArrowDown: at + 1,
      ArrowUp: at - 1,
      PageDown: at + 6,
      PageUp: at - 6,
    };
    const to = moves[event.key];
    if (to !== undefined) move(to);
    else if (event.key === 'Escape') close();
    else if (event.key === 'Enter' && shown[at] !== undefined) pick(shown[at].name);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <>
      <button
        ref={button}
        type="button"
        className="chooser-word base-plain-button"
        aria-expanded={isOpen}
        aria-label={`${says}: ${children}`}
        onClick={() => (isOpen ? close() : open())}
      >
        {children}
      </button>
      {isOpen && (
        <div className="chooser">
          <input
            className="chooser-field type-label"
            type="text"
            role="combobox"
            aria-label={`${says}, filter`}
            aria-expanded="true"
            aria-controls={`${id}list`}
            aria-autocomplete="list"
            aria-activedescendant={shown.length === 0 ? undefined : `${id}${at}`}
            autoComplete="off"
            placeholder="Filter by a word"
            // biome-ignore lint/a11y/noAutofocus: the field opens where its button was pressed
            autoFocus
            value={typed}
            onChange={(event) => {
              setTyped(event.target.value);
              setActive(0);
            }}
            onBlur={() => setOpen(false)}
            onKeyDown={onKeyDown}
          />
          <div
            ref={(element) => {
              list.current = element;
              if (typed === '') element?.children[at]?.scrollIntoView({ block: 'nearest' });
            }}
            className="chooser-list type-small"
            id={`${id}list`}
            role="listbox"
            tabIndex={-1}
            onMouseDown={(event) => event.preventDefault()}
            aria-label={says}
          >
            {shown.map((it, i) => (
              // biome-ignore lint/a11y/useKeyWithClickEvents: keys go to the field, which points at the option
              <div
                key={it.name}
                id={`${id}${i}`}
                role="option"
                aria-selected={it.name === value}
                data-active={i === at ? '' : undefined}
                tabIndex={-1}
                onClick={() => pick(it.name)}
              >
                {it.label}
              </div>
            ))}
          </div>
          {shown.length === 0 && <p className="type-small base-soft">Nothing is called that.</p>}
        </div>
      )}
    </>
  );
}
