import { inputs } from '../../plan/book.ts';
import type { InputCell } from '../../plan/template.ts';
import { type Answers, QUESTIONS, type Question } from './questions.ts';

/** The readings that are asked first, in the order of the pages. */
export const firstInputs: readonly InputCell[] = inputs.filter((cell) => cell.first === true);

/** The first readings that come from the gear rather than from the boat. */
export const firstGearInputs: readonly InputCell[] = firstInputs.filter((cell) => cell.where === 'manual');

export type Step =
  | { readonly kind: 'question'; readonly question: Question }
  | { readonly kind: 'reading'; readonly cell: InputCell }
  /** Says that the gear's values stay stand-ins, in place of asking for them. */
  | { readonly kind: 'gear later' };

const reading = (cell: InputCell): Step => ({ kind: 'reading', cell });

/** One screen each, in order. Only the end depends on the answers, so a step keeps its place. */
export function stepsOf(answers: Answers): readonly Step[] {
  const boat = firstInputs.filter((cell) => cell.where !== 'manual').map(reading);
  const gear: readonly Step[] =
    answers.manual === 'no' ? [{ kind: 'gear later' }] : firstGearInputs.map(reading);
  return [...QUESTIONS.map((question): Step => ({ kind: 'question', question })), ...boat, ...gear];
}
