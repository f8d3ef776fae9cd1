import type { Units, Value } from '../plan/plan.ts';
import type { InputCell } from '../plan/template.ts';
import { formatValue } from '../units/format-value.ts';

/** How much a transom may differ from the planned thickness before bolts, limits and shims are checked again, mm; assumed. */
export const THICKNESS_OFF = 3;

/** How much a lean may differ from the plan, degrees; assumed. */
const LEAN_OFF = 0.5;

/** How many times what such a reading may be off any other may differ from the plan; assumed. */
const TIMES = 5;

/** Within which a reading as fitted goes by without a question, base units; a count has to be the planned one. */
export const fitTolerance = ({ name, unit, off_by }: Pick<InputCell, 'name' | 'unit' | 'off_by'>): number =>
  name === 'transom_thickness' ? THICKNESS_OFF : unit === 'deg' ? LEAN_OFF : TIMES * off_by;

/**
 * What to ask about a reading as fitted before anything follows from it: it differs from the plan by more than such
 * a reading may, or has the other sign. Undefined where there is nothing to ask.
 */
export function fitQuestion(cell: InputCell, planned: Value, read: Value, units: Units): string | undefined {
  if (typeof planned !== 'number' || typeof read !== 'number') return undefined;
  const says = (it: number): string => formatValue(it, cell.unit, { unit: units });
  const off = Math.abs(read - planned);
  const turned = read * planned < 0;
  if (!turned && off <= fitTolerance(cell)) return undefined;
  const other = turned ? ' It has the other sign.' : '';
  return `${cell.label}: ${says(read)} is ${says(off)} ${read > planned ? 'more' : 'less'} than the ${says(planned)} planned.${other} Read it again.`;
}
