import { CAUTION } from './caution.ts';
import type { Plan } from './plan.ts';

/** Characters of the whole link: mail programs and the systems that hand links to them cut longer ones. */
const LONGEST = 1_500;

/** Encoded characters that the plan's name and the scenario's may take, each time they stand in the message. */
const LONGEST_NAME = 240;

const BREAK = '%0D%0A';

/** Signs that could start another header, cannot be shown, or cannot be encoded, become a space. */
const plain = (text: string): string =>
  text
    .replace(/[\p{Cc}\p{Cs}\u2028\u2029]+/gu, ' ')
    .replace(/ {2,}/g, ' ')
    .trim();

/** RFC 6068 asks for what `encodeURIComponent` does; the apostrophe goes as well, since it ends a link in some mails. */
const encoded = (text: string): string => encodeURIComponent(plain(text)).replaceAll("'", '%27');

/** A name encoded, cut at a whole character where it is too long. */
function encodedName(name: string): string {
  const whole = encoded(name);
  if (whole.length <= LONGEST_NAME) return whole;
  const end = encoded('…');
  let cut = '';
  for (const sign of plain(name)) {
    const next = cut + encodeURIComponent(sign).replaceAll("'", '%27');
    if (next.length + end.length > LONGEST_NAME) break;
    cut = next;
  }
  return cut + end;
}

const leftOut = (count: number, of: number): string =>
  encoded(`${count} of ${of} lines did not fit in this message; the plan file has them all.`);

/**
 * A `mailto` link (RFC 6068) with a subject and a summary: the plan, its scenario, the lines given, the caution. What
 * does not fit in 1,500 characters is left out by whole lines from the end, and the message says how many.
 */
export function mailLink(plan: Plan, lines: readonly string[]): string {
  const title = encodedName(plan.title);
  const scenario = encodedName(plan.active ?? 'base values');
  const head = [`${encodeURIComponent('Plan: ')}${title}`, `${encodeURIComponent('Scenario: ')}${scenario}`];
  const all = lines.map(encoded);
  const link = (count: number): string => {
    const summary = all.slice(0, count);
    if (count < all.length) summary.push(leftOut(all.length - count, all.length));
    const body = [...head, '', ...summary, '', encoded(CAUTION)].join(BREAK);
    return `mailto:?subject=${title}&body=${body}`;
  };
  let count = all.length;
  while (count > 0 && link(count).length > LONGEST) count--;
  return link(count);
}
