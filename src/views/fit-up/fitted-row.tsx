import { inputNamed } from '../../plan/book.ts';
import { enterFitted } from '../../session/fit-up/enter-fitted.ts';
import { bareUnit } from '../parts/length-style.ts';
import { shown } from '../parts/show.ts';
import { TextEntry } from '../parts/text-entry.tsx';
import { useAnswer, usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';

/** One input: what was planned, and a field for what was fitted. */
export function FittedRow({ name }: { readonly name: string }) {
  const session = useSession();
  const { fit, units } = usePlan();
  const planned = useAnswer(name)?.value ?? null;
  const cell = inputNamed(name);
  if (cell === undefined) return null;
  const unit = bareUnit(units);
  const reading = fit.fitted.get(name);
  const noted = [reading?.who, reading?.when].filter(Boolean).join(', ');
  return (
    <div className="fit-up-pair" data-fitted={name} data-value={String(reading?.value ?? '')}>
      <span className="fit-up-planned">
        <span className="type-label">{cell.label}</span>
        <span className="type-small base-soft">
          Planned {shown(planned, cell.unit, units)}
          {noted !== '' && `. Read: ${noted}`}
        </span>
      </span>
      <TextEntry
        label={`As fitted: ${cell.label}`}
        labelSpoken
        value={reading === undefined ? '' : shown(reading.value, cell.unit, unit)}
        onPut={(typed) => enterFitted(session, name, typed, by(session))}
        draftKey={`fitted ${name}`}
      />
    </div>
  );
}
