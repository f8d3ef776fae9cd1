import { checkVerdict } from '../../fitting/check-words.ts';
import type { Check } from '../../fitting/step.ts';
import { enterFitted } from '../../session/fit-up/enter-fitted.ts';
import { readAtStep, stepDone } from '../../session/fit-up/steps-done.ts';
import type { Done } from '../../session/session.ts';
import { bareUnit } from '../parts/length-style.ts';
import { shown } from '../parts/show.ts';
import { TextEntry } from '../parts/text-entry.tsx';
import { usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';

interface Props {
  readonly step: string;
  readonly check: Check;
  readonly help?: string;
}

/** Room for what is read at a step, and whether that lets the work go on. */
export function StepReading({ step, check, help }: Props) {
  const session = useSession();
  const plan = usePlan();
  const value = stepDone(plan, step)?.value;
  const { what, unit, fitted } = check;
  const put = (typed: string): Done => {
    const done = readAtStep(session, { step, label: what, unit }, typed, by(session));
    return done.ok && fitted !== undefined ? enterFitted(session, fitted, typed, by(session)) : done;
  };
  const verdict = value === undefined ? undefined : checkVerdict(check, value, plan.units);
  return (
    <div className="fit-up-reading" data-reading={step}>
      <TextEntry
        label={`${what}, ${unit === 'mm' ? bareUnit(plan.units) : '°'}`}
        value={value === undefined ? '' : shown(value, unit, bareUnit(plan.units))}
        onPut={put}
        draftKey={`fit-up ${step}`}
        decimal={unit === 'mm' && plan.units === 'mm'}
        {...(help === undefined ? {} : { help })}
      />
      {verdict !== undefined && (
        <p className={verdict.met ? 'type-small' : 'fit-up-not-met type-small'} role="status">
          {verdict.words}
        </p>
      )}
    </div>
  );
}
