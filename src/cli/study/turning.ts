import { turningAsk } from '../../session/studies/asks.ts';
import { studyWords } from '../../session/study-words.ts';
import { isUnmoved, turningSentence, turnSentence } from '../../studies/turning/words.ts';
import type { Kind } from './kind.ts';

export const turning: Kind<'turning'> = {
  study: 'turning',
  options: ['input', 'low', 'high', 'limit'],
  ask(given) {
    const cell = given.input('input');
    const ask = turningAsk(given.plan, given.scenario, cell.name);
    const [low, high] = given.range(cell);
    const limits = given.limits([]);
    const isOwn = given.last('low') !== undefined || given.last('high') !== undefined;
    return { ...ask, ...(isOwn ? { low, high } : {}), ...(limits.length === 0 ? {} : { limits }) };
  },
  says(turnings, { plan }) {
    const words = studyWords(plan);
    const moved = turnings.limits.filter((it) => !isUnmoved(it));
    return [turningSentence(turnings, words), ...moved.map((it) => turnSentence(it, turnings, words))];
  },
};
