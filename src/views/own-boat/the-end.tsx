import { type ReactNode, useEffect, useMemo, useRef } from 'react';
import { standIns } from '../../plan/stand-ins.ts';
import type { OwnBoatState } from '../../session/own-boat/own-boat.ts';
import { stepsOf } from '../../session/own-boat/steps.ts';
import { standingOf } from '../../session/standing.ts';
import { Action } from '../parts/action.tsx';
import { useJudgement, usePlan, useReady } from '../use-session.ts';
import type { Made } from './making-mount.tsx';
import { MountTold } from './mount-told.tsx';

interface Props {
  readonly state: OwnBoatState;
  /** The mount the plan was opened with; unknown once the page was loaded again. */
  readonly made: Made | undefined;
  readonly board: ReactNode;
  readonly onDone: () => void;
  readonly onBack: () => void;
  readonly onAnew: () => void;
}

const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** The plan is open: on how many stand-ins it rests, how its limits stand, and where to go from here. */
export function TheEnd({ state, made, board, onDone, onBack, onAnew }: Props) {
  const plan = usePlan();
  const { limits } = useJudgement();
  const ready = useReady();
  const standing = useMemo(() => standingOf(limits), [limits]);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  const rests = standIns(plan).length;
  const read = stepsOf(state.answers).filter(
    (it) => it.kind === 'reading' && !state.left.has(it.cell.name),
  ).length;
  const states = [
    `${standing.outside.length} outside`,
    `${standing.unanswered.length} without an answer`,
    `${standing.near.length} near`,
    `${standing.inside.length} inside`,
  ];
  return (
    <section className="own-boat-step">
      <h2 className="own-boat-title type-page" ref={head} tabIndex={-1} data-stand-ins={rests}>
        This plan rests on {count(rests, 'stand-in', 'stand-ins')}
      </h2>
      <p>
        You read {count(read, 'value', 'values')}. The rest are round figures of our own until you enter
        yours, under Boat and Gear; each limit says on how many it rests.
      </p>
      {state.answers.manual === 'no' && (
        <p>Every value of the gear is a stand-in: measure the gear, or get its manual, before you drill.</p>
      )}
      {made !== undefined && <MountTold made={made} />}
      <p>
        {ready
          ? `With this mount the limits are: ${states.join(', ')}. Move any part of it under Mount.`
          : 'The limits are being worked out.'}
      </p>
      <div className="own-boat-doors">
        <Action plate onPress={onDone}>
          See the limits
        </Action>
        <Action onPress={onBack}>Back to the last step</Action>
        <Action onPress={onAnew}>Begin again with another boat</Action>
      </div>
      <p className="type-small base-soft">One undo brings back the plan that was open before.</p>
      {board}
    </section>
  );
}
