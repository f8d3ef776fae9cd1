import type { AnswerOf, AskOf, StudyName } from '../../session/studies/registry.ts';
import type { OptionName } from '../options.ts';
import type { Given } from './given.ts';

/** A study as the command line asks it. */
export interface Kind<N extends StudyName> {
  readonly study: N;
  /** Options it takes beside those that every study takes. */
  readonly options: readonly OptionName[];
  readonly ask: (given: Given) => AskOf<N>;
  /** The answer in sentences, the one that matters most first. */
  readonly says: (answer: AnswerOf<N>, given: Given, ask: AskOf<N>) => readonly string[];
}
