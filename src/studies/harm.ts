import type { LimitSample } from './evaluator.ts';
import { fails, standingOf } from './standing.ts';

/** What happens to another limit, worst first. */
export const WORSE = ['outside', 'no answer', 'further outside', 'near', 'less room'] as const;
export type Worse = (typeof WORSE)[number];

export interface Worsened {
  readonly how: Worse;
  readonly before: LimitSample;
  readonly after: LimitSample;
  /** Room lost, as a share of what room is measured against; 0 where there is none to compare. */
  readonly lost: number;
}

/** A loss of room smaller than this is arithmetic noise. */
const NOISE = 1e-9;

function howWorse(before: LimitSample, after: LimitSample, lost: number): Worse | undefined {
  if (after.state === 'outside' && before.state !== 'outside') return 'outside';
  if (after.state === 'no answer' && before.state !== 'no answer') return 'no answer';
  if (after.state === 'near' && before.state !== 'near' && before.state !== 'outside') return 'near';
  if (lost <= NOISE) return undefined;
  return after.state === 'outside' ? 'further outside' : 'less room';
}

/** Every limit but one that stands worse than before: what turns first, then what loses most room. */
export function worsened(
  before: readonly LimitSample[],
  after: readonly LimitSample[],
  except: string,
): readonly Worsened[] {
  const found = after.flatMap((now, i): Worsened[] => {
    const then = before[i];
    if (then === undefined || now.name === except) return [];
    const lost = then.ratio === null || now.ratio === null ? 0 : Math.max(0, then.ratio - now.ratio);
    const how = howWorse(then, now, lost);
    return how === undefined ? [] : [{ how, before: then, after: now, lost }];
  });
  return found.sort((a, b) => WORSE.indexOf(a.how) - WORSE.indexOf(b.how) || b.lost - a.lost);
}

const isFailing = (it: LimitSample): boolean => fails(standingOf(it));

/** How many limits are outside or without an answer. */
export const failingAmong = (limits: readonly LimitSample[]): number => limits.filter(isFailing).length;

/** How many limits but one fail after and did not before. */
export const newlyFailing = (
  before: readonly LimitSample[],
  after: readonly LimitSample[],
  except: string,
): number =>
  after.filter((now, i) => {
    const then = before[i];
    return then !== undefined && now.name !== except && isFailing(now) && !isFailing(then);
  }).length;

/** Names of the limits but one that fail before and hold after. */
export const mended = (
  before: readonly LimitSample[],
  after: readonly LimitSample[],
  except: string,
): readonly string[] =>
  after
    .filter((now, i) => {
      const then = before[i];
      return then !== undefined && now.name !== except && isFailing(then) && standingOf(now) === 'holds';
    })
    .map((it) => it.name);

const count = (all: readonly Worsened[], ...hows: readonly Worse[]): number =>
  all.filter((it) => hows.includes(it.how)).length;

/** Negative when the first makes fewer limits fail: outside or without an answer, then further outside. */
export const compareFailing = (a: readonly Worsened[], b: readonly Worsened[]): number =>
  count(a, 'outside', 'no answer') - count(b, 'outside', 'no answer') ||
  count(a, 'further outside') - count(b, 'further outside');

/** Negative when the first makes fewer limits turn: those that fail, then those that come near. */
const compareTurned = (a: readonly Worsened[], b: readonly Worsened[]): number =>
  compareFailing(a, b) || count(a, 'near') - count(b, 'near');

const mostLost = (all: readonly Worsened[]): number => Math.max(0, ...all.map((it) => it.lost));

/** Negative when the first does less harm: fewer limits turn, then less room is lost at the worst place. */
export function compareHarm(a: readonly Worsened[], b: readonly Worsened[]): number {
  const more = mostLost(a) - mostLost(b);
  return compareTurned(a, b) || (Math.abs(more) > NOISE ? more : 0);
}
