import { chanceWords, holdsFrom, intervalWords } from '../chance-words.ts';
import type { Followed, LimitOdds, Odds } from '../odds.ts';
import { capital, listed, type Words } from '../words.ts';

const MOST_NAMED = 3;

/** A limit's chance of failing: the one sampled about its design points where that was needed. */
export const failsOf = ({ rare, sampled }: Pick<LimitOdds, 'rare' | 'sampled'>) =>
  rare !== undefined && rare.hits > 0 ? rare.fails : sampled.fails;

/** How likely it is that all limits hold, and which do most of the failing. */
export function togetherSentence({ together, limits }: Odds, certainty: number, words: Words): string {
  const fails = failsOf(together);
  const sure = `${Math.round(100 * certainty)} % sure`;
  const worst = [...limits]
    .filter((it) => failsOf(it).value >= Math.max(0.01 * fails.value, 1e-6))
    .sort((a, b) => failsOf(b).value - failsOf(a).value);
  const blame = worst.slice(0, MOST_NAMED).map((it) => words.limit(it.limit).short);
  const by = [...new Set(blame)];
  const because = by.length === 0 ? '' : ` What fails most often is the ${listed(by)}.`;
  if (fails.value <= 0) {
    return `Every limit holds wherever the readings lie within what they may be off: no failing case in ${together.sampled.count.toLocaleString('en-GB')}, so ${intervalWords(fails)} (${sure}).`;
  }
  if (fails.value < 1e-3) return `Every limit holds but for ${intervalWords(fails)} (${sure}).${because}`;
  return `Every limit holds in ${intervalWords(holdsFrom(fails))} of all cases (${sure}).${because}`;
}

/** Where an input lies that follows others, as far as those may be off. */
export function followedSentence(
  { name, value, low, high }: Followed,
  certainty: number,
  words: Words,
): string {
  const { short, figure } = words.cell(name);
  return `${capital(short)}: ${figure(value)} as it is, from ${figure(low)} to ${figure(high)} in ${Math.round(100 * certainty)} % of all cases.`;
}

/** How an error is spread that is not bell-shaped. */
const SPREAD = {
  even: 'is spread evenly across its ±, with nothing beyond',
  student: 'may be off further than a bell says, as so few rows show (Student’s t)',
} as const;

/** Whether two ways of working out a chance say different things to an owner. */
function differ(a: number, b: number, slack: number): boolean {
  const [low, high] = [Math.min(a, b), Math.max(a, b)];
  return high - low > Math.max(0.01, slack) || (high > 1e-4 && high > 2 * low && high - low > slack);
}

/** Why first order, sample and worst case do not say the same about one limit; undefined where they do. */
export function differenceSentence(odds: LimitOdds, words: Words): string | undefined {
  const { firstOrder, worst, sampled, room } = odds;
  const fails = failsOf(odds);
  const { short, figure } = words.limit(odds.limit);
  if (room === null && fails.value > 0) {
    return sampled.lacking > 0
      ? `${capital(short)} fails where it has no answer; only a sample can see that.`
      : `${capital(short)} has no room to reckon with; only a sample can see it.`;
  }
  if (firstOrder !== null && differ(firstOrder.fails, fails.value, fails.high - fails.low)) {
    if (sampled.lacking > 0.1 * sampled.hits) {
      return `First order says ${chanceWords(firstOrder.fails)}: it does not see the cases without an answer.`;
    }
    if (firstOrder.kink) {
      return `First order says ${chanceWords(firstOrder.fails)}: ${short} has a kink at these readings, and it reckons with one slope.`;
    }
    const { largest, deviation } = firstOrder;
    if (largest !== undefined && largest.part > 0.5 && largest.law !== 'bell') {
      return `First order says ${chanceWords(firstOrder.fails)}: it takes a bell-shaped spread, but the ${words.cell(largest.name).short} dominates, and ${SPREAD[largest.law]}.`;
    }
    if (sampled.mean !== null && Math.abs(sampled.mean - firstOrder.room) > 0.05 * deviation) {
      return `First order says ${chanceWords(firstOrder.fails)}: ${short} bends, so that on average it is ${figure(sampled.mean)} and not ${figure(firstOrder.room)} of room.`;
    }
    return `First order says ${chanceWords(firstOrder.fails)}: it takes straight lines and a bell-shaped spread, which ${short} has not quite.`;
  }
  if (worst.fails && odds.holds && fails.value < 0.05) {
    const many = new Set(worst.at.map((it) => it.of ?? it.name)).size;
    return many < 2
      ? undefined
      : `The worst case is outside, but it needs ${many} readings at the end of their ± together, each in its worst direction.`;
  }
  return undefined;
}
