import { inputNamed } from '../../plan/book.ts';
import { type Plan, readingOf } from '../../plan/plan.ts';
import type { DriverWords } from '../../studies/drivers/words.ts';
import { studyWords } from '../study-words.ts';

/** The plan's words, with what its inputs are and how far each may be off. */
export const driverWords = (plan: Plan): DriverWords => ({
  ...studyWords(plan),
  isChoice: (name) => inputNamed(name)?.kind === 'choice',
  offBy: (name) => readingOf(plan, name)?.offBy ?? inputNamed(name)?.off_by ?? 0,
});
