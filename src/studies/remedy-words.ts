import type { LimitSample } from './evaluator.ts';
import { WORSE, type Worse, type Worsened } from './harm.ts';
import type { Remedies, Remedy, Trial } from './remedies.ts';
import { capital, listed, numberWord, told, type Words } from './words.ts';

/** Limits named for each way of standing worse; the rest is counted. */
const MOST_NAMED = 2;

/** A loss of room under this share is not worth a sentence. */
const SLIGHT = 0.01;

/** `Four shims`, `Upper bracket at 885 mm`, `M12 bolts`, `A stop collar and a line to a strong point`. */
function subjectOf({ choice, inputs }: Remedy, value: number, words: Words): string {
  const things = inputs.flatMap((it) => words.cell(it).thing?.(value) ?? []);
  if (things.length > 0) return capital(listed(things));
  const cell = words.cell(choice);
  if (cell.noun === undefined) return `${capital(cell.short)} at ${told(cell, value)}`;
  const [one, many] = cell.noun;
  return `${capital(numberWord(value))} ${value === 1 ? one : many}`;
}

/** A limit's value beside the one that it has now. */
function outcome(limit: LimitSample, now: LimitSample, words: Words): string {
  if (limit.value === null) return 'no figure';
  const others = [now.value, limit.low, limit.high].filter((it) => it !== null);
  return words.limit(limit.name).figures([limit.value, ...others])[0] ?? '';
}

/** What one remedy does to its limit, in one sentence: `Four shims would give 56.9 mm.` */
export function remedySentence(remedy: Remedy, { limit: now, by }: Remedies, words: Words): string {
  const { choice, first, inside } = remedy;
  const cell = words.cell(choice);
  if (by === 'accepting') {
    return `If you set ${cell.short} to ${told(cell, first.value)}, ${outcome(first.limit, now, words)} is enough.`;
  }
  const subject = subjectOf(remedy, first.value, words);
  if (by === 'leaving') return `${subject} would mean that this limit no longer applies.`;
  if (words.limit(first.limit.name).isYesNo) return `${subject} would meet this limit.`;
  const says = `${subject} would give ${outcome(first.limit, now, words)}`;
  if (first.limit.state !== 'near') return `${says}.`;
  if (inside === undefined) return `${says}, only just enough.`;
  const further = cell.noun === undefined ? cell.figure(inside.value) : numberWord(inside.value);
  return `${says}, only just enough; ${further} would give ${outcome(inside.limit, now, words)}.`;
}

/** A bound as it is after a change, and as it was before. */
interface Bound {
  readonly says: 'at least' | 'more than' | 'at most';
  readonly value: number;
  readonly was: number | null;
}

/** The bound that is nearer, or the only one; undefined without bounds. */
function boundOf({ before, after }: Worsened, words: Words): Bound | undefined {
  const { value, low, high, name } = after;
  // A length that must exist is outside at 0 and less, whatever its other bound.
  const mustExist = after.state === 'outside' && after.room === null && value !== null && value <= 0;
  if (mustExist && low === null) return { says: 'more than', value: 0, was: 0 };
  const isLow = low !== null && (high === null || value === null || value - low <= high - value);
  if (isLow) {
    const says = words.limit(name).lowIsOutside ? 'more than' : 'at least';
    return { says, value: low, was: before.low };
  }
  return high === null ? undefined : { says: 'at most', value: high, was: before.high };
}

/** `lower bolts, from 96 % to 108 % (at most 100 %)`: the limit's value before and after, and its bound. */
function figures(it: Worsened, words: Words): string {
  const { before, after } = it;
  const limit = words.limit(after.name);
  if (after.value === null || limit.isYesNo) return limit.short;
  const bound = boundOf(it, words);
  const wasApplied = before.state !== 'does not apply';
  const was = wasApplied && before.value !== null ? before.value : after.value;
  const boundWas = wasApplied ? (bound?.was ?? bound?.value ?? 0) : (bound?.value ?? 0);
  const [now, then, allowed, allowedThen] = limit.figures([after.value, was, bound?.value ?? 0, boundWas]);
  const moved = then === now ? `${limit.short}, ${now}` : `${limit.short}, from ${then} to ${now}`;
  if (bound === undefined) return moved;
  const instead = allowedThen === allowed ? '' : ` instead of ${allowedThen}`;
  return `${moved} (${bound.says} ${allowed}${instead})`;
}

const BEGINS: Readonly<Record<Worse, string>> = {
  outside: 'Puts outside',
  'no answer': 'Leaves without an answer',
  'further outside': 'Puts further outside',
  near: 'Leaves only just enough',
  'less room': 'Main cost',
};

const GRAVE: readonly Worse[] = ['outside', 'no answer'];

function sentencesFor(hows: readonly Worse[], { worse }: Trial, words: Words): readonly string[] {
  return hows.flatMap((how) => {
    const all = worse.filter((it) => it.how === how && (how !== 'less room' || it.lost >= SLIGHT));
    // Two limits may judge the same thing and read alike.
    const parts = [...new Set(all.map((it) => figures(it, words)))];
    const rest = how === 'less room' ? 0 : parts.length - MOST_NAMED;
    return parts.length === 0
      ? []
      : [`${BEGINS[how]}: ${parts.slice(0, MOST_NAMED).join('; ')}${rest > 0 ? `; and ${rest} more` : ''}.`];
  });
}

const limitsFail = (count: number): string =>
  `${count} ${count === 1 ? 'limit' : 'limits'} outside or without an answer`;

/** What has to be said before a remedy is: which limits it puts outside, and whether that leaves more outside than now. */
export function warningSentences(trial: Trial, { failing }: Remedies, words: Words): readonly string[] {
  const more =
    trial.failing > failing
      ? [
          `This would leave ${limitsFail(trial.failing)}, where now there ${failing === 1 ? 'is' : 'are'} ${failing}.`,
        ]
      : [];
  return [...more, ...sentencesFor(GRAVE, trial, words)];
}

/** What a trial costs elsewhere, with figures, the worst first; one sentence when it is nothing. */
export function costSentences(trial: Trial, words: Words): readonly string[] {
  const sentences = sentencesFor(
    WORSE.filter((it) => !GRAVE.includes(it)),
    trial,
    words,
  );
  const isMild = sentences.length === 0 && trial.worse.every((it) => !GRAVE.includes(it.how));
  return isMild ? ['No other limit becomes noticeably tighter.'] : sentences;
}

/** Other limits that a trial mends as well; undefined when there are none. */
export function mendsSentence({ mends }: Trial, words: Words): string | undefined {
  const shorts = [...new Set(mends.map((it) => words.limit(it).short))];
  return shorts.length === 0 ? undefined : `Also fixes: ${listed(shorts)}.`;
}

/** What is said before the remedies, of all of them; undefined when they need no such word. */
export function remediesSentence({ remedies, by, failing }: Remedies): string | undefined {
  if (remedies.length === 0) return 'No single change within the usual range fixes this. See Proposals.';
  if (by !== 'change') return 'No single change to the mount or its parts fixes this.';
  return remedies.every((it) => it.first.failing > failing)
    ? 'Every single change that fixes this leaves more limits outside than now. See Proposals.'
    : undefined;
}

/** The best that can be said of what would mend a limit. */
export function leadSentence(found: Remedies, words: Words): string {
  const [best] = found.remedies;
  const before = remediesSentence(found);
  // Of a change that costs more than it brings the lead says no more than that.
  if (best === undefined || best.first.failing > found.failing) return before ?? '';
  return [before, remedySentence(best, found, words), ...sentencesFor(GRAVE, best.first, words)]
    .filter((it) => it !== undefined)
    .join(' ');
}
