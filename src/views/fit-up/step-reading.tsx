import { checkVerdict } from '../../fitting/check-words.ts';
import type { Check } from '../../fitting/step.ts';
import { inputNamed } from '../../plan/book.ts';
import { enterFitted, noted, putFitted, questionAbout } from '../../session/fit-up/enter-fitted.ts';
import { readAtStep, stepDone } from '../../session/fit-up/steps-done.ts';
import type { Done } from '../../session/session.ts';
import { Action } from '../parts/action.tsx';
import { bareUnit } from '../parts/length-style.ts';
import { shown } from '../parts/show.ts';
import { TextEntry } from '../parts/text-entry.tsx';
import { usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';
import { useSay } from './say.ts';

interface Props {
  readonly step: string;
  readonly check: Check;
  readonly help?: string;
}

const unitWords = (unit: Check['unit'], bare: 'mm' | 'in'): string =>
  unit === 'mm' ? `, ${bare}` : unit === 'deg' ? ', °' : '';

/** Room for what is read at a step, and whether that lets the work go on. */
export function StepReading({ step, check, help }: Props) {
  const session = useSession();
  const plan = usePlan();
  const value = stepDone(plan, step)?.value;
  const { what, unit, fitted } = check;
  const put = (typed: string): Done => {
    const done = readAtStep(session, { step, label: what, unit }, typed, by(session));
    // A reading that is unlike the plan counts at this step at once, and as fitted only when it is confirmed.
    if (done.ok && fitted !== undefined) enterFitted(session, fitted, typed, by(session));
    return done;
  };
  const verdict = value === undefined ? undefined : checkVerdict(check, value, plan.units);
  return (
    <div className="fit-up-reading" data-reading={step}>
      <TextEntry
        label={`${what}${unitWords(unit, bareUnit(plan.units))}`}
        value={value === undefined ? '' : shown(value, unit, bareUnit(plan.units))}
        onPut={put}
        draftKey={`fit-up ${step}`}
        decimal={unit === '–' || (unit === 'mm' && plan.units === 'mm')}
        {...(help === undefined ? {} : { help })}
      />
      {verdict !== undefined && (
        <p className={verdict.met ? 'type-small' : 'fit-up-not-met type-small'} role="status">
          {verdict.words}
        </p>
      )}
      {fitted !== undefined && value !== undefined && <Confirm name={fitted} value={value} />}
    </div>
  );
}

/** Asks whether a reading that is unlike the plan is to count as fitted. */
function Confirm({ name, value }: { readonly name: NonNullable<Check['fitted']>; readonly value: number }) {
  const session = useSession();
  const say = useSay();
  const { units } = usePlan();
  const question = questionAbout(session, name, value);
  if (question === undefined) return null;
  const words = shown(value, 'mm', bareUnit(units));
  return (
    <div className="fit-up-question">
      <p className="type-small">{question} It does not count as fitted yet.</p>
      <Action
        onPress={() => {
          const offBy = inputNamed(name)?.off_by ?? 0;
          const done = putFitted(
            session,
            name,
            { value, origin: 'reading', offBy, ...noted(by(session)) },
            true,
          );
          say(done.ok ? `${words} counts as fitted.` : done.why);
        }}
      >
        {`Yes, it is ${words}: count it as fitted`}
      </Action>
    </div>
  );
}
