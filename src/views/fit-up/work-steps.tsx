import { useEffect, useRef, useState } from 'react';
import { keyOf } from '../../fitting/key.ts';
import type { WorkStep } from '../../fitting/step.ts';
import { stopPoints } from '../../fitting/stop-points.ts';
import { isWrong, type Stop } from '../../fitting/stops.ts';
import { waited, waitWords } from '../../fitting/wait.ts';
import type { Plan } from '../../plan/plan.ts';
import { stepDone } from '../../session/fit-up/steps-done.ts';
import { stopsNow } from '../../session/fit-up/stops-now.ts';
import { bareUnit } from '../parts/length-style.ts';
import { usePlan, useSession } from '../use-session.ts';
import { HoleTable } from './hole-table.tsx';
import { LockOffer } from './lock-offer.tsx';
import { useSay } from './say.ts';
import { StepReading } from './step-reading.tsx';
import { StopPlate } from './stop-plate.tsx';
import { Tick } from './tick.tsx';
import { useFittedLimits } from './use-as-fitted.ts';
import { useKeptFocus } from './use-kept-focus.ts';
import { useNow } from './use-now.ts';
import { useWork, useWorkGiven } from './use-work.ts';
import { WhoField } from './who-field.tsx';

const WAIT = 'The limits with what was fitted are still being worked out. Press again in a moment.';

/** The day's steps, one row each; the next one is open, and what stops it is at its head. */
export function WorkSteps() {
  const session = useSession();
  const say = useSay();
  const steps = useWork();
  const plan = usePlan();
  const limits = useFittedLimits();
  const now = useNow();
  const [opened, setOpened] = useState<string | null>();
  const [toHead, setToHead] = useState<'plate' | 'tick'>();
  const list = useRef<HTMLOListElement>(null);
  useKeptFocus(list);
  const isDone = ({ name }: WorkStep): boolean => stepDone(plan, name)?.done === true;
  const next = steps.find((it) => !isDone(it));
  const gate = steps.find((it) => it.gate !== undefined && !isDone(it));
  const count = steps.filter(isDone).length;
  const shown = opened === undefined ? next?.name : opened;
  const stopsOf = (step: WorkStep): readonly Stop[] =>
    limits === undefined || isDone(step) ? [] : stopsNow(session, step, steps, limits, now);
  // Before its turn a step shows what is wrong; that steps before it are still to be done is not.
  const stopsShown = (step: WorkStep): readonly Stop[] => {
    if (shown === step.name) return stopsOf(step);
    return gate?.name === step.name ? stopsOf(step).filter(isWrong) : [];
  };
  const wrong = gate === undefined ? 0 : stopsOf(gate).filter(isWrong).length;
  // What was pressed may be gone, or further down than what it led to.
  useEffect(() => {
    if (toHead === undefined) return;
    const row = list.current?.querySelector<HTMLElement>(`[data-row="${shown}"]`);
    row?.querySelector<HTMLElement>(toHead === 'plate' ? '.fit-up-plate-head' : '.base-check')?.focus();
    setToHead(undefined);
  }, [toHead, shown]);
  const open = (step: string): void => {
    setOpened(step);
    setToHead('tick');
  };
  const mayTick = (step: WorkStep) => (): boolean => {
    if (step.gate !== undefined && limits === undefined) {
      say(WAIT);
      return false;
    }
    const stops = stopsOf(step);
    if (stops.length === 0) {
      // Once it is ticked, the next one opens.
      if (opened === step.name) setOpened(undefined);
      return true;
    }
    setOpened(step.name);
    setToHead('plate');
    say(`Stopped: ${stops.length === 1 ? 'one thing stops' : `${stops.length} things stop`} this step.`);
    return false;
  };
  return (
    <>
      <p className="type-lead">
        {count === 0
          ? `${steps.length} steps. The gear’s manual comes first: where it says otherwise, do that.`
          : next === undefined
            ? 'All steps are ticked. Fill in the handover record.'
            : `${count} of ${steps.length} steps done. Next: ${next.title.toLowerCase()}.`}
        {wrong > 0 && gate !== undefined && (
          <strong>{` Stop before step ${steps.indexOf(gate) + 1}: see what is wrong there.`}</strong>
        )}
      </p>
      <WhoField />
      <ol ref={list} className="fit-up-list">
        {steps.map((step, i) => {
          const stops = stopsShown(step);
          return (
            <li
              key={step.name}
              className="fit-up-step"
              data-row={step.name}
              data-open={shown === step.name ? '' : undefined}
            >
              <div className="fit-up-head">
                <Tick step={step.name} label={step.title} mayTick={mayTick(step)}>
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
              {step.gate !== undefined && stops.length > 0 && (
                <StopPlate
                  step={step}
                  gate={step.gate}
                  stops={stops}
                  isDue={shown === step.name}
                  onOpen={open}
                  onGone={() => open(step.name)}
                />
              )}
              {step.drills !== undefined && isDone(step) && (
                <LockOffer drills={step.drills} title={step.title} />
              )}
              {shown === step.name && <StepOpen step={step} now={now} />}
            </li>
          );
        })}
      </ol>
    </>
  );
}

const goneOn = ({ fit }: Plan, step: string) => fit.wentOn.filter((it) => it.step === step);

function StepOpen({ step, now }: { readonly step: WorkStep; readonly now: Date }) {
  const { ask, units } = useWorkGiven();
  const plan = usePlan();
  const point =
    step.stop === undefined ? undefined : stopPoints(ask, units).find((it) => it.name === step.stop);
  const isMet = point !== undefined && stepDone(plan, keyOf(`stop ${point.name}`))?.done === true;
  return (
    <div className="fit-up-open type-small">
      {goneOn(plan, step.name).map(({ because, despite, who, when }) => (
        <p key={`${when} ${because}`}>
          Gone on all the same, because “{because}” ({[who, when].filter(Boolean).join(', ')}). In spite of:{' '}
          {despite.map((it) => it.says).join(' ')}
        </p>
      ))}
      {point !== undefined && (isMet || step.gate === undefined) && (
        <Tick step={keyOf(`stop ${point.name}`)} label={point.before}>
          <span className="fit-up-must">
            {point.before}: {point.must}
          </span>
        </Tick>
      )}
      {step.caution !== undefined && <p className="fit-up-caution">Caution. {step.caution}</p>}
      <p className="type-text">{step.how}</p>
      {step.holes !== undefined && <HoleTable of={step.holes} />}
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
      {step.wait !== undefined && (
        <>
          <StepReading step={step.wait.hours} check={{ what: 'Hours that the maker gives', unit: '–' }} />
          <p role="status">{waitWords(step.wait, waited(step.wait, plan.fit.steps, now))}</p>
        </>
      )}
    </div>
  );
}
