import { type Ask, numberOf } from '../order/ask.ts';
import { feetInUse } from '../order/feet.ts';
import type { CellName } from '../plan/names.ts';
import type { Units } from '../plan/plan.ts';
import { formatLength } from '../units/format-length.ts';

/** What is read at a step's check, and the bounds it must keep to, base units. */
export interface Check {
  readonly what: string;
  readonly unit: 'mm' | 'deg';
  readonly low?: number;
  readonly high?: number;
  /** The input that the reading stands for, as fitted. */
  readonly fitted?: string;
}

/** One step of the day. Everything in it is common practice, no source; the gear's manual comes first. */
export interface WorkStep {
  readonly name: string;
  readonly title: string;
  /** What to do, whole sentences. */
  readonly how: string;
  readonly why: string;
  readonly tools: string;
  readonly hands: string;
  /** What must be seen before the next step. */
  readonly check: string;
  /** What to do, before the next hole, when the check fails. */
  readonly otherwise: string;
  /** Where it can hurt. */
  readonly caution?: string;
  readonly reading?: Check;
  /** Choices that this step's holes fix. */
  readonly drills?: readonly string[];
  /** The stop point that stands before this step. */
  readonly stop?: string;
}

/** What the steps are made from. */
export interface WorkGiven {
  readonly ask: Ask;
  readonly units: Units;
}

export const lengthWords = ({ ask, units }: WorkGiven, name: CellName): string => {
  const value = numberOf(ask, name);
  return value === undefined ? 'the planned length' : formatLength(value, { unit: units });
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
