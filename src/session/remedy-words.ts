import { cellNamed, inputNamed, limitNamed } from '../plan/book.ts';
import type { Plan, Units } from '../plan/plan.ts';
import type { InputCell } from '../plan/template.ts';
import type { LimitSample } from '../studies/evaluator.ts';
import type { Movable, Moved, Remedy } from '../studies/remedies.ts';
import { brief } from './limit-words.ts';
import { restsOn } from './standing.ts';

const NUMBERS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten'];

const unitOf = (limit: string): string => cellNamed(limitNamed(limit)?.result ?? limit)?.unit ?? '–';
const labelOf = (limit: string): string => cellNamed(limitNamed(limit)?.result ?? limit)?.label ?? limit;

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** "Four shims", or "Height of the upper bracket at 890 mm". */
function choiceWords(cell: InputCell, value: number, units: Units): { words: string; several: boolean } {
  if (cell.noun !== undefined) {
    const count = NUMBERS[value] ?? String(value);
    return { words: `${count} ${value === 1 ? cell.noun[0] : cell.noun[1]}`, several: value !== 1 };
  }
  return { words: `${cell.label} at ${brief(value, cell.unit, units)}`, several: false };
}

const valueWords = (sample: LimitSample, units: Units): string =>
  sample.value === null ? 'no answer' : brief(sample.value, unitOf(sample.name), units);

/** "Four shims give 56.9 mm." */
export function remedySentence(remedy: Remedy, units: Units): string {
  const cell = inputNamed(remedy.choice);
  if (cell === undefined) return '';
  const { words, several } = choiceWords(cell, remedy.value, units);
  return `${words} ${several ? 'give' : 'gives'} ${valueWords(remedy.mended.after, units)}.`;
}

const movedWords = ({ before, after }: Moved, units: Units): string =>
  `${lowerFirst(labelOf(after.name))}, from ${valueWords(before, units)} to ${valueWords(after, units)}`;

/** Most limits named in what a remedy makes worse. */
const MOST_NAMED = 2;

const worseWords = ({ before, after }: Moved, units: Units): string =>
  after.state === 'no answer'
    ? `${lowerFirst(labelOf(after.name))} has no answer`
    : `${movedWords({ before, after }, units)}, ${after.state}`;

/** What a remedy makes worse, as sentences; it may be nothing. */
export function harmSentences({ worse, costliest }: Remedy, units: Units): string[] {
  if (worse.length > 0) {
    const rest = worse.length - MOST_NAMED;
    const named = worse.slice(0, MOST_NAMED).map((it) => worseWords(it, units));
    return [`It makes worse: ${named.join('; ')}${rest > 0 ? `; and ${rest} more` : ''}.`];
  }
  return costliest === undefined
    ? ['Nothing else loses room worth naming.']
    : [`It takes room from: ${movedWords(costliest, units)}.`];
}

/** The unlocked choices that reach a limit's result, as a study moves them. */
export function movablesFor(
  limit: string,
  plan: Plan,
  uses: ReadonlyMap<string, readonly string[]>,
  valueOfInput: (name: string) => unknown,
): Movable[] {
  const result = limitNamed(limit)?.result ?? plan.limits.find((it) => it.name === limit)?.result;
  if (result === undefined) return [];
  const names = restsOn(result, uses);
  return [...plan.inputs.keys()].flatMap((name): Movable[] => {
    const cell = inputNamed(name);
    const present = valueOfInput(name);
    if (cell?.kind !== 'choice' || !names.has(name) || plan.locked.has(name) || typeof present !== 'number')
      return [];
    const [low, high] = cell.usual ?? [cell.min ?? present, cell.max ?? present];
    return [
      {
        name,
        present,
        low: Math.min(low, present),
        high: Math.max(high, present),
        whole: cell.type === 'whole',
        step: cell.step ?? 1,
      },
    ];
  });
}
