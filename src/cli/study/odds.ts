import { oddsAsk } from '../../session/studies/asks.ts';
import { leftOutSentence } from '../../session/studies/left-out.ts';
import { studyWords } from '../../session/study-words.ts';
import { chanceWords, intervalWords } from '../../studies/chance-words.ts';
import { differenceSentence, failsOf, followedSentence, togetherSentence } from '../../studies/odds/words.ts';
import type { LimitOdds } from '../../studies/odds.ts';
import { lawsSentence } from '../../studies/uncertain/laws.ts';
import { capital, type Words } from '../../studies/words.ts';
import type { Kind } from './kind.ts';
import { withShare } from './share.ts';

/** Chances of failing below this are not told one by one. */
const LEAST_TOLD = 1e-9;

function limitSentence(it: LimitOdds, words: Words): string {
  const first =
    it.firstOrder === null ? 'first order says nothing' : `first order ${chanceWords(it.firstOrder.fails)}`;
  const worst = it.worst.fails ? 'fails in the worst case' : 'holds in the worst case';
  const { short } = words.limit(it.limit);
  return `${capital(short)}: fails in ${intervalWords(failsOf(it))}; ${first}; ${worst}.`;
}

export const odds: Kind<'odds'> = {
  study: 'odds',
  options: ['share'],
  ask: (given) => oddsAsk(given.plan, given.scenario, withShare(given)),
  says(answer, { plan, scenario }, ask) {
    const words = studyWords(plan);
    const told = answer.limits.filter((it) => failsOf(it).value > LEAST_TOLD || it.worst.fails);
    return [
      togetherSentence(answer, ask.certainty, words),
      ...told.flatMap((it) => [limitSentence(it, words), differenceSentence(it, words) ?? '']),
      ...answer.followed.map((it) => followedSentence(it, ask.certainty, words)),
      lawsSentence(ask.errors, words),
      leftOutSentence(plan, scenario),
    ].filter((it) => it !== '');
  },
};
