import { stepOf } from '../../plan/step-of.ts';
import { freeChoices, freedAmong, heldBy, usuallyFreed } from '../../session/studies/free-choices.ts';
import { leftOutSentence } from '../../session/studies/left-out.ts';
import { proposalsAsk } from '../../session/studies/proposals-ask.ts';
import { studyWords } from '../../session/study-words.ts';
import { inputsOf, type Mount } from '../../studies/proposals/ask.ts';
import {
  changeWords,
  conflictSentence,
  failingWords,
  looseningSentence,
  nearestWords,
  proposalSentence,
} from '../../studies/proposals/proposal-words.ts';
import { Refused } from '../exit.ts';
import type { Given } from './given.ts';
import type { Kind } from './kind.ts';

/** The choices that are freed: those named, else those that the plan says, else the usual ones. */
function freeIn(given: Given): readonly string[] {
  const asked = given.all('free');
  for (const name of asked) {
    const choice = freeChoices.find((it) => it.name === name);
    const known = freeChoices.map((it) => it.name).join(', ');
    if (choice === undefined) throw new Refused(`--free cannot be “${name}”; it takes ${known}.`);
    const held = heldBy(given.plan, choice);
    if (held === undefined) continue;
    throw new Refused(`--free: ${name} cannot be moved: it ${held === 'drilled' ? 'is drilled' : held}.`);
  }
  if (asked.length > 0) return asked;
  const kept = given.settings('proposals')['free'];
  if (Array.isArray(kept)) return kept.filter((it) => typeof it === 'string');
  return usuallyFreed(given.workbook.answer('strut_count').value);
}

export const proposals: Kind<'proposals'> = {
  study: 'proposals',
  options: ['free'],
  ask(given) {
    const { plan, scenario, workbook } = given;
    const free = freeIn(given);
    if (freedAmong(plan, free).length === 0)
      throw new Refused('Nothing is freed; --free names what may move.');
    return proposalsAsk({
      plan,
      scenario,
      free,
      value: (name) => workbook.answer(name).value,
      uses: workbook.uses(),
      stepOf: (cell) => stepOf(cell, plan.units),
    });
  },
  says(found, { plan, scenario }, ask) {
    const words = studyWords(plan);
    const inputs = inputsOf(ask);
    const changes = (mount: Mount): string => changeWords(mount, ask.present, ask.freed, inputs, words);
    const { conflict } = found;
    if (conflict !== undefined) {
      return [
        conflictSentence(conflict, words),
        `Nearest: ${changes(conflict.nearest)}. Not met there: ${failingWords(conflict.nearest, words)}; ${nearestWords(conflict.nearest, words)}.`,
        ...conflict.loosenings.map((it) => looseningSentence(it, words)),
      ];
    }
    const said = found.proposals.map((it) => `${changes(it)}. ${proposalSentence(it, words)}`);
    return [...said, leftOutSentence(plan, scenario, 'Left out of their odds')];
  },
};
