import { CLASSES, type LimitClass } from './classes.ts';
import { leastRatio, type State, type Verdict } from './judge.ts';

/** What the order of limits goes by. */
export interface Ranked {
  readonly class: LimitClass;
  readonly verdict: Verdict;
}

const STATES_WORST_FIRST: readonly State[] = ['outside', 'no answer', 'near', 'inside', 'does not apply'];

/** 0 for the worst state. */
export const stateRank = (state: State): number => STATES_WORST_FIRST.indexOf(state);

const classRank = (it: Ranked): number => (it.verdict.state === 'outside' ? CLASSES.indexOf(it.class) : 0);

/** A yes/no limit that holds comes after every limit that has room. */
const share = ({ verdict }: Ranked): number => leastRatio(verdict) ?? Number.MAX_VALUE;

/**
 * Negative when the first limit is the worse one: outside, no answer, near, inside; among those outside by class, what
 * cannot be built first; then the smallest share of room.
 */
export const byWorst = (a: Ranked, b: Ranked): number =>
  stateRank(a.verdict.state) - stateRank(b.verdict.state) ||
  classRank(a) - classRank(b) ||
  share(a) - share(b);

/** The limits that apply, the worst first; equals stay in their order. */
export const worstFirst = <T extends Ranked>(limits: readonly T[]): readonly T[] =>
  limits.filter((it) => it.verdict.state !== 'does not apply').sort(byWorst);

/** The limits outside because the parts cannot be put together so, the worst first. */
export const cannotBeBuilt = <T extends Ranked>(limits: readonly T[]): readonly T[] =>
  worstFirst(limits).filter((it) => it.verdict.state === 'outside' && it.class === 'cannot be built');
