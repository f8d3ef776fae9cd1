import type { StepDone, Units, WentOn } from '../plan/plan.ts';
import { formatValue } from '../units/format-value.ts';
import { leanWay, type Stands } from './bob.ts';
import { beyond, checkVerdict } from './check-words.ts';
import { keyOf } from './key.ts';
import type { WorkStep } from './step.ts';
import type { StopPoint } from './stop-points.ts';
import { waited, waitWords } from './wait.ts';

/** What may stop a step that cannot be taken back. */
export type StopKind = 'reading' | 'limit' | 'stand-in' | 'hardening' | 'skipped' | 'stop point';

/** Something that stands before a step that drills, cuts, beds or tightens. */
export interface Stop {
  readonly kind: StopKind;
  /** What it goes by in the plan file. */
  readonly stop: string;
  /** The step, stop point, limit or input it is about. */
  readonly about: string;
  /** The cell to look at, where there is one. */
  readonly cell?: string;
  /** What a stop point is called. */
  readonly title?: string;
  /** What is wrong, a whole sentence. */
  readonly says: string;
  /** What to do about it. */
  readonly otherwise?: string;
  /** How far beyond what is allowed, base units; absent where that has no size. */
  readonly by?: number;
}

/** A limit that is not met, or an input that is a stand-in, as the caller says it. */
export interface Wrong {
  readonly about: string;
  /** The cell to look at. */
  readonly cell: string;
  readonly says: string;
  readonly by?: number;
}

export interface StopsGiven {
  readonly steps: readonly WorkStep[];
  readonly points: readonly StopPoint[];
  readonly done: readonly StepDone[];
  readonly units: Units;
  readonly now: Date;
  /** Limits that are not met as fitted, the worst first. */
  readonly limits: readonly Wrong[];
  /** Stand-ins under what this step drills or cuts. */
  readonly standIns: readonly Wrong[];
  /** How the shaft is, where that was read, and the lean accepted either way, degrees. */
  readonly leans?: Stands;
  readonly leanMax?: number;
}

const isDone = (done: readonly StepDone[], name: string): boolean =>
  done.some((it) => it.step === name && it.done);

/** Readings at the steps before that are not met, and those that a ticked step ought to have and has not. */
function readingStops({ steps, done, units }: StopsGiven, before: number): Stop[] {
  return steps.slice(0, before).flatMap(({ name, title, reading, otherwise }, i): Stop[] => {
    if (reading === undefined) return [];
    const step = `Step ${i + 1}, ${title.toLowerCase()}: ${reading.what.toLowerCase()}`;
    const value = done.find((it) => it.step === name)?.value;
    if (value === undefined) {
      if (!isDone(done, name)) return [];
      const says = `${step} was not entered.`;
      return [{ kind: 'reading', stop: keyOf(`no reading ${name}`), about: name, says }];
    }
    const verdict = checkVerdict(reading, value, units);
    if (verdict === undefined || verdict.met) return [];
    const read = formatValue(value, reading.unit, { unit: units });
    return [
      {
        kind: 'reading',
        stop: keyOf(`reading ${name}`),
        about: name,
        says: `${step} is ${read}. ${verdict.words}`,
        otherwise,
        by: beyond(reading, value),
      },
    ];
  });
}

/** A shaft that leans more than is accepted. */
function leanStops({ leans, leanMax, units }: StopsGiven): Stop[] {
  if (leans === undefined || leanMax === undefined) return [];
  return (['aft', 'side'] as const).flatMap((way): Stop[] => {
    const lean = leans.boat[way];
    const by = Math.abs(lean) - leanMax;
    if (!(by > 0)) return [];
    const most = formatValue(leanMax, 'deg', { unit: units });
    return [
      {
        kind: 'reading',
        stop: `reading_lean_${way}`,
        about: 'lean',
        says: `The shaft leans ${leanWay(lean, way, units)} in the boat; you accept at most ${most}.`,
        otherwise: 'Move the upper clamp, or turn the bracket on its one bolt, and read again.',
        by,
      },
    ];
  });
}

const wrongStops = (kind: 'limit' | 'stand-in', all: readonly Wrong[]): Stop[] =>
  all.map((it) => ({ ...it, kind, stop: keyOf(`${kind} ${it.about}`) }));

/** What was laid earlier and has not had the time its maker gives. */
function waitStops({ steps, done, now }: StopsGiven, before: number): Stop[] {
  return steps.slice(0, before).flatMap(({ name, wait }): Stop[] => {
    if (wait === undefined) return [];
    const it = waited(wait, done, now);
    if (it.state !== 'waiting' && it.state !== 'no hours') return [];
    return [{ kind: 'hardening', stop: keyOf(`wait ${name}`), about: name, says: waitWords(wait, it) }];
  });
}

const skippedStops = ({ steps, done }: StopsGiven, before: number): Stop[] =>
  steps.slice(0, before).flatMap(({ name, title }, i): Stop[] =>
    isDone(done, name)
      ? []
      : [
          {
            kind: 'skipped',
            stop: keyOf(`tick ${name}`),
            about: name,
            says: `Step ${i + 1}, ${title.toLowerCase()}, is not ticked.`,
          },
        ],
  );

/** Stop points that stand before this step or one before it. */
function pointStops({ steps, points, done }: StopsGiven, at: number): Stop[] {
  const reached = new Set(steps.slice(0, at + 1).flatMap((it) => it.stop ?? []));
  return points
    .filter(({ name }) => reached.has(name) && !isDone(done, keyOf(`stop ${name}`)))
    .map(({ name, before, must, otherwise }) => ({
      kind: 'stop point',
      stop: keyOf(`stop ${name}`),
      about: name,
      title: before,
      says: `${before}: ${must}`,
      otherwise,
    }));
}

/** Everything that stops a step; nothing for one that can be taken back. */
export function stopsBefore(step: WorkStep, given: StopsGiven): readonly Stop[] {
  const at = given.steps.findIndex((it) => it.name === step.name);
  if (step.gate === undefined || at < 0) return [];
  return [
    ...readingStops(given, at),
    ...leanStops(given),
    ...wrongStops('limit', given.limits),
    ...wrongStops('stand-in', given.standIns),
    ...waitStops(given, at),
    ...skippedStops(given, at),
    ...pointStops(given, at),
  ];
}

/** How much worse a stop may be than when the work went on, so that rounding does not bring it back. */
const SAME = 1e-9;

const covers = (passed: WentOn['despite'][number], stop: Stop): boolean =>
  passed.stop === stop.stop &&
  (stop.by === undefined || passed.by === undefined || stop.by <= passed.by + SAME);

/** Stops for which nobody has given a reason yet, or that have become worse since. */
export const openStops = (stops: readonly Stop[], wentOn: readonly WentOn[]): readonly Stop[] =>
  stops.filter((stop) => !wentOn.some((it) => it.despite.some((passed) => covers(passed, stop))));

/** Whether a stop says that something is wrong now, and not only that something is still to be done. */
export const isWrong = ({ kind }: Stop): boolean =>
  kind === 'reading' || kind === 'limit' || kind === 'stand-in';
