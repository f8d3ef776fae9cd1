import { type ReactNode, useEffect, useMemo, useState } from 'react';
import type { Plan } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import {
  back,
  forward,
  leftToStandIn,
  nothingYet,
  type OwnBoatState,
  stepNow,
  withAnswer,
  withTyped,
} from '../../session/own-boat/own-boat.ts';
import { type PictureAsk, pictureAsk } from '../../session/own-boat/picture-ask.ts';
import { planOf } from '../../session/own-boat/plan-of.ts';
import { readStep } from '../../session/own-boat/read-step.ts';
import { stepsOf } from '../../session/own-boat/steps.ts';
import { withMount } from '../../session/own-boat/with-mount.ts';
import { doubtOf } from '../../session/unit-question/enter-clear.ts';
import { inUnit } from '../../session/unit-question/unit-doubt.ts';
import { leftWhy, unitQuestionsOf } from '../../session/unit-question/unit-questions.ts';
import { pointAt } from '../parts/pointed.ts';
import { useSession } from '../use-session.ts';
import { GearLater } from './gear-later.tsx';
import { type Made, MakingMount } from './making-mount.tsx';
import { type Memory, windowMemory } from './memory.ts';
import { QuestionStep } from './question-step.tsx';
import { ReadingStep } from './reading-step.tsx';
import { type Focus, StepFrame } from './step-frame.tsx';
import { TheEnd } from './the-end.tsx';
import { useSteps } from './use-steps.ts';
import './own-boat.css';

/** What undo calls the whole new plan. */
const LABEL = 'Plan my own boat';

const TITLE = 'My own boat';

const today = (): string => {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

const askOf = (state: OwnBoatState): PictureAsk | undefined => {
  const step = stepNow(state);
  return step?.kind === 'reading' ? pictureAsk(state, step.cell) : undefined;
};

interface Props {
  /** A small picture of what is measured, from what is known so far. */
  readonly picture?: (ask: PictureAsk) => ReactNode;
  /** The limit board, shown at the end. */
  readonly board?: ReactNode;
  /** Told whether readings are being taken, so that what is shown beside is not another boat. */
  readonly onUnderway?: (isUnderway: boolean) => void;
  /** Called when somebody is through and wants to see the limits. */
  readonly onDone: () => void;
  readonly memory?: Memory;
}

/** Plan my own boat: four questions, then the first readings one at a time, then the plan they make. */
export function OwnBoat({ picture, board, onUnderway, onDone, memory = windowMemory }: Props) {
  const session = useSession();
  const [state, setState] = useSteps(memory);
  const [why, setWhy] = useState<string>();
  const [focus, setFocus] = useState<Focus>('nothing');
  /** The plan that the steps make, while a mount for it is worked out; then what that came to. */
  const [planned, setPlanned] = useState<Plan>();
  const [made, setMade] = useState<Made>();
  const steps = stepsOf(state.answers);
  const step = stepNow(state);
  const ask = useMemo(() => askOf(state), [state]);
  const isUnderway = step !== undefined;
  useEffect(() => {
    onUnderway?.(isUnderway);
    return () => onUnderway?.(false);
  }, [onUnderway, isUnderway]);
  const measured = step?.kind === 'reading' ? step.cell.name : undefined;
  useEffect(() => {
    pointAt(measured);
    return () => pointAt(undefined);
  }, [measured]);

  const move = (next: OwnBoatState): void => {
    setWhy(undefined);
    setState(next);
  };
  /** Goes on; past the last step a mount is worked out for the plan that they make. */
  const goOn = (from: OwnBoatState, withKey = false): void => {
    setFocus(withKey ? 'field' : 'heading');
    const next = forward(from);
    if (stepNow(next) !== undefined) {
      move(next);
      return;
    }
    const all = planOf(from, TITLE, today());
    if (all.ok) {
      move(from);
      setPlanned(all.plan);
    } else {
      setState({ ...from, at: all.at });
      setWhy(all.why);
    }
  };
  /** Opens the plan with its mount, as one step that undo takes back. */
  const open = (plan: Plan, mount: Made): void => {
    session.open(withMount(plan, mount.values), LABEL);
    setMade(mount);
    setPlanned(undefined);
    move(forward(state));
  };
  const goBack = (): void => {
    setFocus('heading');
    move(back(state));
  };
  const read = (cell: InputCell, from: OwnBoatState, withKey: boolean): void => {
    const put = (now: OwnBoatState): void => {
      const entered = readStep(now, cell);
      if (entered.ok) goOn(now, withKey);
      else setWhy(entered.why);
    };
    const typed = from.left.has(cell.name) ? '' : (from.typed.get(cell.name) ?? '');
    const meant = from.answers.units === 'in' ? 'in' : 'mm';
    const doubt = readStep(from, cell).ok ? doubtOf(cell, typed, meant) : undefined;
    unitQuestionsOf(session).whenClear({
      typed: [typed],
      doubts: doubt === undefined ? [] : [doubt],
      meant,
      put: (unit) => put(unit === meant ? from : withTyped(from, cell.name, inUnit(typed, unit))),
      leave: () => setWhy(doubt === undefined ? undefined : leftWhy(doubt)),
    });
  };

  const frame = { at: state.at, focus, onBack: state.at === 0 ? undefined : goBack };
  return (
    <div className="own-boat" data-view="own-boat">
      {planned !== undefined && (
        <StepFrame
          at={state.at}
          focus="heading"
          onBack={() => setPlanned(undefined)}
          key="mount"
          title="A mount for your boat"
          place="The mount"
        >
          <MakingMount plan={planned} onMade={(mount) => open(planned, mount)} />
        </StepFrame>
      )}
      {planned === undefined && step?.kind === 'question' && (
        <StepFrame
          {...frame}
          key={state.at}
          title={step.question.asks}
          place={`Question ${state.at + 1} of 4`}
        >
          <QuestionStep
            question={step.question}
            given={state.answers[step.question.id]}
            onAnswer={(word) => goOn(withAnswer(state, step.question.id, word))}
          />
          {why !== undefined && (
            <p className="own-boat-why" role="alert">
              {why}
            </p>
          )}
        </StepFrame>
      )}
      {planned === undefined && step?.kind === 'reading' && (
        <StepFrame
          {...frame}
          key={state.at}
          title={step.cell.label}
          place={`Reading ${state.at - 3} of ${steps.filter((it) => it.kind === 'reading').length}`}
        >
          <ReadingStep
            cell={step.cell}
            state={state}
            why={why}
            picture={ask === undefined ? undefined : picture?.(ask)}
            onType={(text) => move(withTyped(state, step.cell.name, text))}
            onLean={(lean) => move(withAnswer(state, 'lean', lean))}
            onNext={(withKey) =>
              read(
                step.cell,
                withTyped(state, step.cell.name, state.typed.get(step.cell.name) ?? ''),
                withKey,
              )
            }
            onLeave={() => read(step.cell, leftToStandIn(state, step.cell.name), false)}
          />
        </StepFrame>
      )}
      {planned === undefined && step?.kind === 'gear later' && (
        <StepFrame {...frame} key={state.at} title="The gear’s values stay stand-ins" place="The gear">
          <GearLater
            units={state.answers.units ?? 'both'}
            onGoOn={() => goOn(state)}
            onMeasure={() => move(withAnswer(state, 'manual', 'yes'))}
          />
        </StepFrame>
      )}
      {step === undefined && (
        <TheEnd
          state={state}
          made={made}
          board={board}
          onDone={() => {
            setState(nothingYet);
            onDone();
          }}
          onBack={() => {
            if (session.undoes === LABEL) session.undo();
            goBack();
          }}
          onAnew={() => move(nothingYet)}
        />
      )}
    </div>
  );
}
