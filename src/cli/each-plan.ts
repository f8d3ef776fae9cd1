import type { Writable } from 'node:stream';
import { Refused } from './exit.ts';
import { filesLike } from './plan-files.ts';

/**
 * Answers each plan that a pattern stands for in one line of JSON, its file first, in the order of the names. A plan
 * that is refused says so in its own line; the command then ends as refused.
 */
export function answerEach(pattern: string, output: Writable, answer: (file: string) => object): void {
  const files = filesLike(pattern);
  if (files.length === 0) throw new Refused(`There is no plan like ${pattern}.`);
  let refused = 0;
  for (const file of files) {
    let line: object;
    try {
      line = answer(file);
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      refused++;
      line = { error: error.message };
    }
    output.write(`${JSON.stringify({ file, ...line })}\n`);
  }
  if (refused === 0) return;
  const these = refused === 1 ? '1 was refused; its line says' : `${refused} were refused; their lines say`;
  throw new Refused(`Of ${files.length} plans ${these} why.`);
}
