import { beforeYouStart } from '../../fitting/before.ts';
import type { Ask } from '../../order/ask.ts';
import { NOTES } from '../not-judged/notes.ts';

/** A question of the work, and the place on the page that answers it. */
export interface Answered {
  readonly title: string;
  readonly href: string;
  readonly place: string;
}

/** Words that a question is made of rather than what it asks after. */
const PLAIN = new Set(
  'a an and are at be can do does for how i if in is it my of on or the to what when which who with'.split(
    ' ',
  ),
);

/**
 * Questions with the most words of a search in them, of those that Fit-up answers before the start and of what is not
 * judged. A question's plain words are passed over; none is given when no word stands anywhere.
 */
export function questionsFound(search: string, ask: Ask): readonly Answered[] {
  const words = search
    .toLowerCase()
    .split(/[\s?,;:]+/)
    .filter((it) => it !== '' && !PLAIN.has(it));
  const all = [
    ...beforeYouStart(ask).map(({ title, asked, text }) => ({
      title,
      href: '#/fit-up/before',
      place: 'Before you start',
      text: [title, asked ?? '', text],
    })),
    ...NOTES.map(({ title, asked, pieces }) => ({
      title,
      href: '#/not-judged',
      place: 'Not covered',
      text: ['not judged', title, asked ?? '', ...pieces.filter((it) => typeof it === 'string')],
    })),
  ].map(({ text, ...rest }) => {
    const said = text.join(' ').toLowerCase();
    return { rest, hits: words.filter((word) => said.includes(word)).length };
  });
  const most = Math.max(...all.map(({ hits }) => hits));
  return most === 0 ? [] : all.filter(({ hits }) => hits === most).map(({ rest }) => rest);
}
