import { tan } from '../calc/angle.ts';
import { number, type Values } from './values.ts';

/**
 * How far to starboard the shaft's axis stands at a height, mm: the lower clamp holds it at its offset, and from there
 * it leans to the side as it was read. Null while offset or, for a lean, the lower clamp's height is missing.
 */
export function asideAt(values: Values, height: number): number | null {
  const offset = number(values, 'shaft_offset');
  const lean = number(values, 'shaft_side_lean') ?? 0;
  if (offset === null || lean === 0) return offset;
  const lower = number(values, 'lower_bracket_height');
  return lower === null ? null : offset + (height - lower) * tan(lean);
}
