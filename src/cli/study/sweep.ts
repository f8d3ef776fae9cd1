import { sweepAsk } from '../../session/studies/sweep-ask.ts';
import { studyWords } from '../../session/study-words.ts';
import { isCrossing, turnsAt, whatHolds } from '../../studies/sweep-words.ts';
import { capital } from '../../studies/words.ts';
import type { Kind } from './kind.ts';

/** Fewest and most values looked at along an input. */
const POINTS = [2, 2000] as const;

export const sweep: Kind<'sweep'> = {
  study: 'sweep',
  options: ['input', 'low', 'high', 'points', 'result'],
  ask(given) {
    const cell = given.input('input');
    const ask = sweepAsk(cell, given.results([given.worst().result]), given.scenario);
    const [low, high] = given.range(cell);
    return { ...ask, low, high, points: given.number('points', ...POINTS, true) ?? ask.points };
  },
  says(swept, { plan }) {
    const words = studyWords(plan);
    const x = words.cell(swept.ask.input);
    const turns = swept.turnings
      .filter(isCrossing)
      .map((it) => `${capital(words.limit(it.limit).short)} ${turnsAt(it, x)}.`);
    return [whatHolds(swept, words), ...turns];
  },
};
