import { useState } from 'react';
import { keyOf } from '../../fitting/key.ts';
import type { WorkStep } from '../../fitting/step.ts';
import { stopPoints } from '../../fitting/stop-points.ts';
import { stepDone } from '../../session/fit-up/steps-done.ts';
import { bareUnit } from '../parts/length-style.ts';
import { usePlan } from '../use-session.ts';
import { LockOffer } from './lock-offer.tsx';
import { StepReading } from './step-reading.tsx';
import { Tick } from './tick.tsx';
import { useWork, useWorkGiven } from './use-work.ts';
import { WhoField } from './who-field.tsx';

/** The day's steps, one row each; the next one stands open. */
export function WorkSteps() {
  const steps = useWork();
  const plan = usePlan();
  const [opened, setOpened] = useState<string | null>();
  const isDone = ({ name }: WorkStep): boolean => stepDone(plan, name)?.done === true;
  const next = steps.find((it) => !isDone(it))?.name;
  const count = steps.filter(isDone).length;
  const shown = opened === undefined ? next : opened;
  return (
    <>
      <p className="type-lead">
        {count === 0
          ? `${steps.length} steps. The gear’s manual comes first: where it says otherwise, do that.`
          : next === undefined
            ? 'All steps are ticked. Fill in the handover record.'
            : `${count} of ${steps.length} steps done. Next: ${steps.find((it) => it.name === next)?.title.toLowerCase()}.`}
      </p>
      <WhoField />
      <ol className="fit-up-list">
        {steps.map((step, i) => (
          <li key={step.name} className="fit-up-step" data-open={shown === step.name ? '' : undefined}>
            <div className="fit-up-head">
              <Tick step={step.name} label={step.title}>
                <span className="type-label">
                  {i + 1}. {step.title}
                </span>
              </Tick>
              <button
                type="button"
                className="fit-up-more base-plain-button type-small"
                aria-expanded={shown === step.name}
                onClick={() => setOpened(shown === step.name ? null : step.name)}
              >
                {shown === step.name ? 'less' : 'how'}
                <span className="base-spoken">: {step.title}</span>
              </button>
            </div>
            {step.drills !== undefined && isDone(step) && (
              <LockOffer drills={step.drills} title={step.title} />
            )}
            {shown === step.name && <StepOpen step={step} />}
          </li>
        ))}
      </ol>
    </>
  );
}

function StepOpen({ step }: { readonly step: WorkStep }) {
  const { ask, units } = useWorkGiven();
  const plan = usePlan();
  const stop =
    step.stop === undefined ? undefined : stopPoints(ask, units).find((it) => it.name === step.stop);
  const stopMet = stop !== undefined && stepDone(plan, keyOf(`stop ${stop.name}`))?.done === true;
  return (
    <div className="fit-up-open type-small">
      {stop !== undefined && (
        <p className={stopMet ? undefined : 'fit-up-stop'}>
          {stopMet ? 'Stop point met: ' : 'Stop first: '}
          {stop.must} <a href="#/fit-up/stops">Stop points</a>
        </p>
      )}
      <p className="type-text">{step.how}</p>
      {step.caution !== undefined && <p className="fit-up-caution">Caution. {step.caution}</p>}
      <dl className="fit-up-facts">
        <dt>Why</dt>
        <dd>{step.why}</dd>
        <dt>Tools</dt>
        <dd>{step.tools}</dd>
        <dt>Hands</dt>
        <dd>{step.hands}</dd>
        <dt>Check</dt>
        <dd>{step.check}</dd>
        <dt>If not</dt>
        <dd>{step.otherwise}</dd>
      </dl>
      {step.reading !== undefined && (
        <StepReading key={bareUnit(units)} step={step.name} check={step.reading} />
      )}
    </div>
  );
}
