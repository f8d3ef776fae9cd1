import { formatLength } from '../../units/format-length.ts';
import { type Bare, otherUnit } from './unit-doubt.ts';
import type { UnitQuestion } from './unit-questions.ts';

const NAMES: Readonly<Record<Bare, string>> = { mm: 'mm', in: 'inches' };

export interface QuestionWords {
  readonly title: string;
  readonly says: string;
  /** The unit it is taken for comes last: it is the less likely one. */
  readonly choices: readonly { readonly unit: Bare; readonly words: string }[];
}

/** What is asked, in the plan's own unit first. */
export function questionWords({ doubts, count }: UnitQuestion): QuestionWords {
  const [first] = doubts;
  if (first === undefined) return { title: 'mm or inches?', says: '', choices: [] };
  const { label, typed, meant, usual } = first;
  const length = (mm: number): string => formatLength(mm, { unit: meant });
  const other = otherUnit(meant);
  const range = `${length(usual[0])} to ${length(usual[1])}`;
  const one = `${label}: ${typed} has no unit. In ${NAMES[meant]} it lies far outside the usual ${range}.`;
  const more = count > 1 ? ` Your answer holds for all ${count} lengths without a unit.` : '';
  const words = (unit: Bare): string =>
    count > 1
      ? NAMES[unit]
      : unit === meant
        ? `${typed} ${unit}`
        : `${typed} ${unit}, which is ${length(first.in[unit])}`;
  return {
    title: 'mm or inches?',
    says: one + more,
    choices: [other, meant].map((unit) => ({ unit, words: words(unit) })),
  };
}
