import { useEffect, useId, useRef, useState } from 'react';
import type { Guest } from '../../session/plan-file/guests.ts';
import { REASONS } from '../../session/plan-file/reasons.ts';
import { Action } from '../parts/action.tsx';

interface Props {
  readonly guest: Guest & { readonly kind: 'refused' };
  readonly onTry: (text: string) => void;
  readonly onSaveText: (name: string, text: string) => void;
  readonly onLeave: () => void;
}

const UNREAD = {
  title: 'This file could not be read',
  next: 'Choose it again, or copy it to this device first.',
};

/** A file that was not opened: which of the reasons it was, what to do, and its text, which can be mended or saved. */
export function RefusedFile({ guest, onTry, onSaveText, onLeave }: Props) {
  const { name, reason, why, text } = guest;
  const { title, next } = reason === undefined ? UNREAD : REASONS[reason];
  const id = useId();
  const [typed, setTyped] = useState(text ?? '');
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  return (
    <div className="plan-file-guest">
      <h4 className="type-section" ref={head} tabIndex={-1} data-reason={reason}>
        {title}
      </h4>
      <p>
        {name}: {why} {next}
      </p>
      {text !== undefined && (
        <>
          <label className="type-small base-soft" htmlFor={id}>
            Its text, to the letter
          </label>
          <textarea
            id={id}
            className="plan-file-text"
            rows={8}
            spellCheck={false}
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
        </>
      )}
      <div className="plan-file-doors">
        {text !== undefined && (
          <>
            <Action plate disabled={typed === text} onPress={() => onTry(typed)}>
              Try the mended text
            </Action>
            <Action onPress={() => onSaveText(name, typed)}>Save this text as a file</Action>
          </>
        )}
        <Action onPress={onLeave}>Put it away</Action>
      </div>
    </div>
  );
}
