import { limitNamed } from '../plan/book.ts';
import type { Units } from '../plan/plan.ts';
import { formatValue } from '../units/format-value.ts';
import type { LimitAnswer } from '../workbook/judged.ts';

/** A figure in one unit system: millimetres unless inches alone are shown, so that a line stays short. */
export const brief = (value: number, unit: string, units: Units): string =>
  formatValue(value, unit, { unit: units === 'in' ? 'in' : 'mm' });

/** "5.3 mm past", "18.7° room", or nothing for a limit without room. */
export function roomWords(limit: LimitAnswer, unit: string, units: Units): string {
  const { room } = limit.verdict;
  if (room === undefined) return '';
  return room < 0 ? `${brief(-room, unit, units)} past` : `${brief(room, unit, units)} room`;
}

/** "at least 50 mm", "50 mm to 250 mm", "at most 1". */
export function boundWords(limit: LimitAnswer, unit: string, units: Units): string {
  const low = limit.low === undefined ? undefined : brief(limit.low, unit, units);
  const high = limit.high === undefined ? undefined : brief(limit.high, unit, units);
  if (low !== undefined && high !== undefined) return `${low} to ${high}`;
  if (low !== undefined) return `at least ${low}`;
  return high === undefined ? '' : `at most ${high}`;
}

/** What a limit says of the plan now: its value in a sentence, then what was asked for. */
export function limitSentence(limit: LimitAnswer, unit: string, units: Units): string {
  const cell = limitNamed(limit.name);
  const { state } = limit.verdict;
  if (state === 'past' && cell?.past !== undefined) return cell.past;
  if (cell === undefined || limit.value === undefined) return '';
  const said = cell.says.replace('{value}', brief(limit.value, unit, units));
  if (!limit.graded || state === 'inside') return said;
  const asked = boundWords(limit, unit, units);
  if (cell.source === "owner's choice") return `${said.slice(0, -1)}; you asked for ${asked}.`;
  return `${said.slice(0, -1)}; ${asked} is allowed.`;
}
