import { worstFirst } from '../../calc/limits/worst-first.ts';
import type { Units } from '../../plan/plan.ts';
import { standingOf } from '../../session/standing.ts';
import type { Judgement } from '../../workbook/judged.ts';
import { limitSentence, limitTitle, roomWords } from '../../workbook/limit-words.ts';

export interface LeadText {
  /** What is outside, or nearest to it, and why. */
  readonly says: string;
  /** The limit that a remedy would mend; undefined when nothing needs mending. */
  readonly mend: string | undefined;
  /** What else there is. */
  readonly more: string;
}

const MOST_NAMED = 2;

/** "Rudder gap, swung", "Rudder gap, swung and Stock", "Rudder gap, swung, Stock and 3 others". */
function listed(names: readonly string[]): string {
  const named = names.slice(0, MOST_NAMED);
  const others = names.length - named.length;
  if (others > 0) return `${named.join('; ')}; and ${others} more`;
  return named.join('; ');
}

/** The page's one sentence: what is outside and why; else what has no answer; else how little room is left. */
export function leadOf(judgement: Judgement, units: Units): LeadText | undefined {
  const standing = standingOf(judgement.limits);
  const worst = worstFirst(judgement.limits)[0];
  if (worst === undefined) return undefined;
  const { outside, unanswered, near, inside } = standing;
  if (outside.length > 0) {
    const others = outside.slice(1).map(limitTitle);
    const more = [
      ...(others.length > 0 ? [`Also outside: ${listed(others)}.`] : []),
      ...(unanswered.length > 0 ? [`Without an answer: ${listed(unanswered.map(limitTitle))}.`] : []),
    ];
    const unbuilt = worst.class === 'cannot be built' ? 'As planned it cannot be built. ' : '';
    return { says: unbuilt + limitSentence(worst, units), mend: worst.name, more: more.join(' ') };
  }
  if (unanswered.length > 0) {
    const others = unanswered.slice(1).map(limitTitle);
    return {
      says: limitSentence(worst, units),
      mend: undefined,
      more: others.length > 0 ? `Without an answer as well: ${listed(others)}.` : '',
    };
  }
  if (near.length > 0) {
    const others = near.slice(1).map(limitTitle);
    return {
      says: `Nothing is outside, ${near.length === 1 ? 'one limit is near' : `${near.length} limits are near`}. ${limitSentence(worst, units)}`,
      mend: worst.name,
      more: others.length > 0 ? `Near as well: ${listed(others)}.` : '',
    };
  }
  return {
    says: `All ${inside.length} limits that apply are inside. Least room: ${limitTitle(worst)}, ${roomWords(worst, units)}.`,
    mend: undefined,
    more: '',
  };
}
