import { mountAsk } from '../../session/studies/mount-ask.ts';
import { studyWords } from '../../session/study-words.ts';
import { MADE } from '../../studies/first-mount/ask.ts';
import {
  conflictSentence,
  freeingWords,
  mountSentence,
  standingSentence,
} from '../../studies/first-mount/words.ts';
import { Refused } from '../exit.ts';
import type { Kind } from './kind.ts';

export const mount: Kind<'mount'> = {
  study: 'mount',
  options: [],
  ask({ plan, scenario }) {
    const drilled = MADE.find((it) => plan.locked.has(it));
    if (drilled !== undefined)
      throw new Refused(
        `A first mount makes every choice, and ${drilled} is drilled; proposals moves only what is free.`,
      );
    return mountAsk(plan, scenario);
  },
  says(found, { plan }) {
    const words = studyWords(plan);
    return [
      mountSentence(found.mount, words),
      standingSentence(found, words),
      ...found.conflicts.flatMap((it) => [
        conflictSentence(it, found, words),
        ...it.frees.map((free) => `${freeingWords(free, words)} would do.`),
      ]),
    ];
  },
};
