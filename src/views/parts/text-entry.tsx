import { type FocusEvent, type KeyboardEvent, useEffect, useId, useState } from 'react';
import type { Done } from '../../session/session.ts';
import { useSession } from '../use-session.ts';
import { useKeptDraft } from './use-kept-draft.ts';
import { useSelectAll } from './use-select-all.ts';
import './text-entry.css';

interface Props {
  readonly label: string;
  /** What is in use now, as a person would type it. */
  readonly value: string;
  /** Puts in what was typed; a refusal keeps the text, with its sentence under the field. */
  readonly onPut: (typed: string) => Done;
  /** Under which a refused text is kept. */
  readonly draftKey: string;
  /** The label is read out only, because the words beside the field say it already. */
  readonly labelSpoken?: boolean;
  readonly help?: string;
  readonly lines?: number;
  /** A figure: typed over as a whole. */
  readonly figure?: boolean;
  /** A figure that needs no more than a phone's number keys. */
  readonly decimal?: boolean;
  /** Formulas and names are better read letter by letter. */
  readonly code?: boolean;
  /** The page hook of an input that goes by a name. */
  readonly input?: string;
  /** The box has the focus: names may be put into it. */
  readonly onFocused?: (box: HTMLInputElement | HTMLTextAreaElement) => void;
  /** Takes the focus when it appears. */
  readonly focused?: boolean;
  /** The field was left with nothing refused. */
  readonly onLeft?: () => void;
  /** Enter was pressed and nothing was refused. */
  readonly onEntered?: () => void;
}

const SAME: Done = { ok: true };

/** A field for any text that an edit may refuse: it is put in on Enter or on leaving, and stays as typed when refused. */
export function TextEntry(props: Props) {
  const {
    label,
    value,
    onPut,
    draftKey,
    labelSpoken = false,
    help,
    lines = 1,
    decimal = false,
    figure = decimal,
    code = false,
  } = props;
  const id = useId();
  const session = useSession();
  const { draft, keep, drop } = useKeptDraft(draftKey);
  const [typed, setTyped] = useState<string>();
  const { box, selectAll, onMouseDown } = useSelectAll();

  /** Whether nothing was refused. */
  const put = (): boolean => {
    if (typed !== undefined) {
      const done = typed === value ? SAME : onPut(typed);
      if (done.ok) drop();
      else keep(typed, done.why);
      setTyped(undefined);
      if (!done.ok) return false;
    }
    props.onLeft?.();
    return true;
  };
  // A phone may drop a page that is no longer looked at: what is half typed goes in first.
  useEffect(() => {
    if (typed === undefined) return;
    const onHide = (): void => {
      if (document.hidden) put();
    };
    document.addEventListener('visibilitychange', onHide, true);
    return () => document.removeEventListener('visibilitychange', onHide, true);
  });
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter' && lines === 1) {
      // What is put in and what follows from Enter are one step.
      session.asOne(() => {
        const taken = put();
        selectAll();
        if (taken) props.onEntered?.();
      });
    }
    if (event.key === 'Escape') {
      drop();
      setTyped(undefined);
      props.onLeft?.();
    }
  };
  const described = [help === undefined ? '' : `${id}help`, draft?.why === undefined ? '' : `${id}why`]
    .filter(Boolean)
    .join(' ');
  const shared = {
    id,
    className: `text-entry-box ${code ? 'text-entry-code' : ''}`,
    value: typed ?? draft?.typed ?? value,
    'aria-invalid': draft?.why === undefined ? undefined : true,
    'aria-describedby': described === '' ? undefined : described,
    'data-input': props.input,
    autoComplete: 'off',
    spellCheck: lines > 1,
    autoFocus: props.focused,
    onFocus: (event: FocusEvent<HTMLInputElement | HTMLTextAreaElement>) => {
      if (figure) selectAll();
      props.onFocused?.(event.currentTarget);
    },
    onBlur: () => {
      put();
    },
    onKeyDown,
  };
  return (
    <span className="text-entry">
      <label className={labelSpoken ? 'base-spoken' : 'text-entry-label type-small'} htmlFor={id}>
        {label}
      </label>
      {lines > 1 ? (
        <textarea {...shared} rows={lines} onChange={(event) => setTyped(event.target.value)} />
      ) : (
        <input
          {...shared}
          ref={box}
          onMouseDown={figure ? onMouseDown : undefined}
          type="text"
          inputMode={decimal ? 'decimal' : 'text'}
          onChange={(event) => setTyped(event.target.value)}
        />
      )}
      {help !== undefined && (
        <span className="text-entry-help type-small" id={`${id}help`}>
          {help}
        </span>
      )}
      {draft?.why !== undefined && (
        <span className="text-entry-why type-small" id={`${id}why`} role="alert">
          {draft.why}
        </span>
      )}
    </span>
  );
}
