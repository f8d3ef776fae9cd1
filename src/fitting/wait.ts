import type { StepDone } from '../plan/plan.ts';
import type { Wait } from './step.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** A day and minute as they are kept: `2031-04-09 10:12`, local time. */
const KEPT = /^(\d{4})-(\d\d)-(\d\d) (\d\d):(\d\d)$/;

const two = (value: number): string => String(value).padStart(2, '0');

/** The day and minute as they are kept with a reading, local time. */
export const nowWords = (now = new Date()): string =>
  `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())} ${two(now.getHours())}:${two(now.getMinutes())}`;

/** The moment that a kept day and minute tell; undefined for any other text. */
export function momentOf(when: string | undefined): Date | undefined {
  const parts = KEPT.exec(when ?? '')
    ?.slice(1)
    .map(Number);
  if (parts === undefined) return undefined;
  const [year = 0, month = 1, day = 1, hour = 0, minute = 0] = parts;
  return new Date(year, month - 1, day, hour, minute);
}

/** How a wait is getting on. */
export type Waited =
  /** It has not begun. */
  | { readonly state: 'not begun' }
  /** The maker's hours are not entered. */
  | { readonly state: 'no hours' }
  /** It began at a time that nobody kept. */
  | { readonly state: 'no time' }
  | {
      readonly state: 'waiting' | 'over';
      readonly since: string;
      readonly until: string;
      readonly hours: number;
    };

/** Whether something has taken the time its maker gives, counted from the tick it begins with. */
export function waited({ from, hours: name }: Wait, done: readonly StepDone[], now: Date): Waited {
  const begun = done.find((it) => it.step === from);
  if (begun?.done !== true) return { state: 'not begun' };
  const hours = done.find((it) => it.step === name)?.value;
  if (hours === undefined) return { state: 'no hours' };
  const since = momentOf(begun.when);
  if (since === undefined) return { state: 'no time' };
  const until = new Date(since.getTime() + hours * HOUR);
  return {
    state: now < until ? 'waiting' : 'over',
    since: nowWords(since),
    // Never earlier than it is: a begun minute counts as whole.
    until: nowWords(new Date(Math.ceil(until.getTime() / MINUTE) * MINUTE)),
    hours,
  };
}

/** What to say of a wait, one sentence or two. */
export function waitWords({ what, done }: Wait, it: Waited): string {
  switch (it.state) {
    case 'not begun':
      return 'The time counts from the tick of the step before.';
    case 'no hours':
      return `${what}: enter the hours that its maker gives for the temperature you have. They are on the tin or its data sheet.`;
    case 'no time':
      return `${what}: when it was laid was not kept. Wait as long as its maker gives, counted from when you know it was laid.`;
    default:
      return `${what} was laid at ${it.since}; its maker gives ${it.hours} h. ${it.state === 'over' ? `It has ${done} since ${it.until}.` : `It will have ${done} at ${it.until}.`}`;
  }
}
