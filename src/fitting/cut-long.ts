import type { Units } from '../plan/plan.ts';
import { formatLength } from '../units/format-length.ts';

const SIXTEENTH = 25.4 / 16;

/** Less than this over a mark is arithmetic noise, mm. */
const NOISE = 1e-6;

const upTo = (mm: number, step: number): number => Math.ceil((mm - NOISE) / step) * step;

/** A length to cut, rounded up to the next whole mm or 16th of an inch: a tube cut short is lost. */
export function cutWords(mm: number, units: Units): string {
  const metric = formatLength(upTo(mm, 1), { unit: 'mm', decimals: 0 });
  const inches = formatLength(upTo(mm, SIXTEENTH), { unit: 'in' });
  return units === 'mm' ? metric : units === 'in' ? inches : `${metric} (${inches})`;
}
