import { useCallback } from 'react';
import type { InputCell } from '../../plan/template.ts';
import type { Session } from '../../session/session.ts';
import { useLook, useReading, useSession } from '../use-session.ts';
import { useEdge } from './entry-field.tsx';
import { glide } from './glide.ts';
import { optionsOf } from './options.ts';

interface Props {
  readonly cell: InputCell;
  readonly labelledBy: string;
  readonly describedBy?: string | undefined;
  readonly id?: string | undefined;
  readonly onTold: (why: string | undefined) => void;
}

/** A field for an input whose values are few enough to list. */
export function PickField({ cell, labelledBy, describedBy, id, onTold }: Props) {
  const session = useSession();
  const reading = useReading(cell.name);
  const edge = useEdge(cell.name);
  const locked = useLook(useCallback((it: Session) => it.plan.locked.has(cell.name), [cell.name]));
  const options = optionsOf(cell) ?? [];
  const present = options.find(([, value]) => value === reading?.value);
  return (
    <span className="entry-pick-frame">
      <select
        id={id}
        className={`entry-pick type-value ${edge}`}
        data-input={cell.name}
        aria-labelledby={labelledBy}
        aria-describedby={describedBy}
        disabled={locked}
        value={present?.[0] ?? ''}
        onChange={(event) => {
          glide();
          const picked = options.find(([word]) => word === event.target.value);
          const done = session.choose(cell.name, picked?.[1] ?? null);
          onTold(done.ok ? undefined : done.why);
        }}
      >
        {present === undefined && <option value="">not entered</option>}
        {options.map(([word]) => (
          <option key={word} value={word}>
            {word}
          </option>
        ))}
      </select>
    </span>
  );
}
