import type { LimitSample } from './evaluator.ts';
import { WORSE, type Worse, type Worsened } from './harm.ts';
import type { Remedies, Remedy, Trial } from './remedies.ts';
import { capital, listed, numberWord, told, type Words } from './words.ts';

/** Limits named for each way of standing worse; the rest is counted. */
const MOST_NAMED = 2;

/** A loss of room under this share is not worth a sentence. */
const SLIGHT = 0.01;

interface Subject {
  readonly words: string;
  readonly gives: 'give' | 'gives';
}

/** `Four shims give`, `Upper bracket at 885 mm gives`. */
function subjectOf(choice: string, value: number, words: Words): Subject {
  const cell = words.cell(choice);
  if (cell.noun === undefined)
    return { words: `${capital(cell.short)} at ${told(cell, value)}`, gives: 'gives' };
  const [one, many] = cell.noun;
  return {
    words: `${capital(numberWord(value))} ${value === 1 ? one : many}`,
    gives: value === 1 ? 'gives' : 'give',
  };
}

const outcome = (limit: LimitSample, words: Words): string =>
  limit.value === null ? 'no figure' : words.limit(limit.name).figure(limit.value);

/** What one remedy does to its limit, in one sentence: `Four shims give 56.9 mm.` */
export function remedySentence({ choice, first, inside }: Remedy, accepting: boolean, words: Words): string {
  const cell = words.cell(choice);
  if (accepting) {
    return `With ${told(cell, first.value)} accepted for ${cell.short}, ${outcome(first.limit, words)} holds.`;
  }
  const subject = subjectOf(choice, first.value, words);
  if (first.limit.state === 'does not apply') return `${subject.words}: this limit then no longer applies.`;
  const says = `${subject.words} ${subject.gives} ${outcome(first.limit, words)}`;
  if (inside === undefined || inside.limit.state === 'does not apply') return `${says}.`;
  const further = cell.noun === undefined ? cell.figure(inside.value) : numberWord(inside.value);
  const gives = cell.noun !== undefined && inside.value !== 1 ? 'give' : 'gives';
  return `${says}, still near; ${further} ${gives} ${outcome(inside.limit, words)}.`;
}

/** `at most 1`: the bound that is nearer, or the only one; undefined without bounds. */
function boundWords({ value, low, high, name }: LimitSample, words: Words): string | undefined {
  const { figure } = words.limit(name);
  const isLow = low !== null && (high === null || value === null || value - low <= high - value);
  if (isLow) return `at least ${figure(low)}`;
  return high === null ? undefined : `at most ${figure(high)}`;
}

function figures({ before, after }: Worsened, words: Words): string {
  const { short, figure } = words.limit(after.name);
  if (after.value === null) return short;
  const from = before.value === null ? '' : `from ${figure(before.value)} `;
  const bound = boundWords(after, words);
  return `${short}, ${from}to ${figure(after.value)}${bound === undefined ? '' : ` (${bound})`}`;
}

const BEGINS: Readonly<Record<Worse, string>> = {
  outside: 'Turns outside',
  'no answer': 'Loses its answer',
  'further outside': 'Goes further outside',
  near: 'Comes near',
  'less room': 'Loses most room',
};

/** What a trial makes worse, with figures, the worst first; one sentence when it is nothing. */
export function worseSentences({ worse }: Trial, words: Words): readonly string[] {
  const sentences = WORSE.flatMap((how) => {
    const all = worse.filter((it) => it.how === how && (how !== 'less room' || it.lost >= SLIGHT));
    // Two limits may judge the same thing and read alike.
    const parts = [...new Set(all.map((it) => figures(it, words)))];
    const rest = how === 'less room' ? 0 : parts.length - MOST_NAMED;
    return parts.length === 0
      ? []
      : [`${BEGINS[how]}: ${parts.slice(0, MOST_NAMED).join('; ')}${rest > 0 ? `; and ${rest} more` : ''}.`];
  });
  return sentences.length === 0 ? ['Nothing else loses room worth naming.'] : sentences;
}

/** Other limits that a trial mends as well; undefined when there are none. */
export function mendsSentence({ mends }: Trial, words: Words): string | undefined {
  const shorts = [...new Set(mends.map((it) => words.limit(it).short))];
  return shorts.length === 0 ? undefined : `It also mends: ${listed(shorts)}.`;
}

/** The best that can be said of what would mend a limit. */
export function leadSentence({ remedies, accepting }: Remedies, words: Words): string {
  const [best] = remedies;
  if (best === undefined) return 'No single choice mends it inside its usual range.';
  const says = remedySentence(best, accepting, words);
  return accepting ? `No choice of the mount mends it by itself. ${says}` : says;
}
