import { useRef } from 'react';
import { inputNamed } from '../../plan/book.ts';
import type { InputName } from '../../plan/names.ts';
import { askedAbout, enterFitted, plannedOf } from '../../session/fit-up/enter-fitted.ts';
import { Action } from '../parts/action.tsx';
import { bareUnit } from '../parts/length-style.ts';
import { shown } from '../parts/show.ts';
import { TextEntry } from '../parts/text-entry.tsx';
import { useKeptDraft } from '../parts/use-kept-draft.ts';
import { usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';
import { useSay } from './say.ts';

/** One input: what was planned, and a field for what was fitted. A value unlike the plan is asked about once more. */
export function FittedRow({ name }: { readonly name: InputName }) {
  const session = useSession();
  const say = useSay();
  const { fit, units } = usePlan();
  const row = useRef<HTMLDivElement>(null);
  const draftKey = `fitted ${name}`;
  const { draft, drop } = useKeptDraft(draftKey);
  const cell = inputNamed(name);
  if (cell === undefined) return null;
  const unit = bareUnit(units);
  const reading = fit.fitted.get(name);
  const noted = [reading?.who, reading?.when].filter(Boolean).join(', ');
  const asked = draft === undefined ? undefined : askedAbout(session, name, draft.typed);
  const words = asked === undefined ? '' : shown(asked, cell.unit, unit);
  const toField = (): void => row.current?.querySelector('input')?.focus();
  return (
    <div ref={row} className="fit-up-pair" data-fitted={name} data-value={String(reading?.value ?? '')}>
      <span className="fit-up-planned">
        <span className="type-label">{cell.label}</span>
        <span className="type-small base-soft">
          Planned {shown(plannedOf(session, name), cell.unit, units)}
          {noted !== '' && `. Read: ${noted}`}
        </span>
      </span>
      <TextEntry
        label={`As fitted: ${cell.label}`}
        labelSpoken
        value={reading === undefined ? '' : shown(reading.value, cell.unit, unit)}
        onPut={(typed) => enterFitted(session, name, typed, by(session))}
        draftKey={draftKey}
      />
      {draft !== undefined && asked !== undefined && (
        <div className="fit-up-question">
          <Action
            plate
            onPress={() => {
              const done = enterFitted(session, name, draft.typed, by(session), true);
              if (done.ok) drop();
              say(done.ok ? `${cell.label}: ${words} is taken as fitted.` : done.why);
              toField();
            }}
          >
            {`Yes, I read ${words}`}
          </Action>
          <Action
            onPress={() => {
              drop();
              say(`${cell.label}: dropped.`);
              toField();
            }}
          >
            Drop it
          </Action>
        </div>
      )}
    </div>
  );
}
