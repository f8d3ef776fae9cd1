import type { Session } from '../../../session/session.ts';
import { unitQuestionsOf } from '../../../session/unit-question/unit-questions.ts';
import type { Hot } from './chosen.ts';

/**
 * Gives a table its keys back once a question about a unit is answered: the press that answered it was outside, and the
 * table takes that for being left, though the focus has come back to it.
 */
export function listenAfterQuestions(hot: Hot, root: HTMLElement, session: Session): () => void {
  const questions = unitQuestionsOf(session);
  return questions.subscribe(() => {
    if (questions.now() !== undefined) return;
    setTimeout(() => {
      if (root.contains(document.activeElement)) hot.listen();
    });
  });
}
