import { type Ask, numberOf } from '../order/ask.ts';
import { feetInUse } from '../order/feet.ts';
import type { CellName, InputName } from '../plan/names.ts';
import type { Units } from '../plan/plan.ts';
import { formatLength } from '../units/format-length.ts';

/** What is read at a step's check, and the bounds it must keep to, base units. */
export interface Check {
  readonly what: string;
  /** Hours are plain numbers. */
  readonly unit: 'mm' | 'deg' | '–';
  readonly low?: number;
  readonly high?: number;
  /** The input that the reading stands for, as fitted. */
  readonly fitted?: InputName;
}

/** What cannot be taken back once it is done. */
export type Gate = 'drill' | 'cut' | 'bed' | 'tighten';

/** Time that something takes before the work goes on. */
export interface Wait {
  /** `The epoxy`, as a sentence begins with it. */
  readonly what: string;
  readonly done: 'hardened' | 'cured';
  /** The step with whose tick the time begins. */
  readonly from: string;
  /** Under which name the maker's hours are kept, beside the steps. */
  readonly hours: string;
}

/** One step of the day. Everything in it is common practice, no source; the gear's manual comes first. */
export interface WorkStep {
  readonly name: string;
  readonly title: string;
  /** What to do, whole sentences. */
  readonly how: string;
  readonly why: string;
  readonly tools: string;
  /** How many people, and where. */
  readonly hands: string;
  /** What must be seen before the next step. */
  readonly check: string;
  /** What to do, before the next hole, when the check fails. */
  readonly otherwise: string;
  /** Where it can hurt. */
  readonly caution?: string;
  readonly reading?: Check;
  readonly gate?: Gate;
  /** Whose holes are marked or drilled here. */
  readonly holes?: 'lower' | 'feet';
  /** Choices that this step's holes fix. */
  readonly drills?: readonly InputName[];
  /** The stop point that stands before this step. */
  readonly stop?: string;
  readonly wait?: Wait;
}

/** What the steps are made from. */
export interface WorkGiven {
  readonly ask: Ask;
  readonly units: Units;
}

/** Below this a 16th of an inch would say something else than is meant, mm. */
const FINE = 25.4 / 16;

/** A length in the plan's own unit; a small one in hundredths of an inch. */
export function inUnit({ units }: Pick<WorkGiven, 'units'>, mm: number): string {
  if (units === 'mm' || Math.abs(mm) >= FINE) return formatLength(mm, { unit: units });
  const inches = formatLength(mm, { unit: 'in', decimals: 2 });
  return units === 'in' ? inches : `${formatLength(mm, { unit: 'mm' })} (${inches})`;
}

export const lengthWords = (given: WorkGiven, name: CellName): string => {
  const value = numberOf(given.ask, name);
  return value === undefined ? 'the planned length' : inUnit(given, value);
};

/** `the foot` or `the feet`. */
export const feetWords = ({ ask }: WorkGiven): string =>
  feetInUse(ask).length === 1 ? 'the foot' : 'the feet';

export const isSingle = ({ ask }: WorkGiven): boolean => feetInUse(ask).length === 1;

/** The bolt's own diameter, as the size of its hole is said. */
export const boltWords = ({ ask }: WorkGiven): string => {
  const d = numberOf(ask, 'bolt_diameter');
  return d === undefined ? 'the bolt’s size' : `the size for an M${d} bolt`;
};
