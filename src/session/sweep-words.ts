import { cellNamed, inputNamed, limitNamed } from '../plan/book.ts';
import type { Units } from '../plan/plan.ts';
import type { Swept, Turning } from '../studies/sweep.ts';
import { brief } from './limit-words.ts';

const labelOf = (limit: string): string => {
  const cell = cellNamed(limitNamed(limit)?.result ?? limit);
  return cell?.label ?? limit;
};

/** Most limits named in the sentence; the table has the rest. */
const MOST = 4;

const isFailing = (standing: Turning['to']): boolean => standing === 'past' || standing === 'no answer';

/** "Between the two rudders, amidships: holds from 4 up." for every limit that turns within the range. */
export function whatHolds({ ask, turnings, points }: Swept, units: Units): string {
  const cell = inputNamed(ask.input);
  const unit = cell?.unit ?? '–';
  const at = (value: number): string => brief(value, unit, units);
  const told = turnings
    .filter((it) => isFailing(it.from) !== isFailing(it.to))
    .map(
      (it) =>
        `${labelOf(it.limit)}: ${isFailing(it.to) ? `fails from ${at(it.at)} up` : `holds from ${at(it.at)} up`}`,
    );
  const unique = [...new Set(told)];
  const rest = unique.length - MOST;
  const always = (points[0]?.limits ?? []).filter(
    (limit) => limit.state === 'past' && !turnings.some((it) => it.limit === limit.name),
  );
  const sentences = [
    unique.length === 0
      ? `No limit turns anywhere in this range.`
      : `${unique.slice(0, MOST).join('; ')}${rest > 0 ? `; and ${rest} more` : ''}.`,
  ];
  if (always.length > 0) {
    sentences.push(`Past throughout: ${always.map((it) => labelOf(it.name)).join('; ')}.`);
  }
  return sentences.join(' ');
}
