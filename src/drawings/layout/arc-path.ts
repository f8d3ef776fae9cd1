import { cos, sin } from '../../calc/angle.ts';
import { type Px, round } from './px.ts';

/** A place on a circle; degrees anticlockwise from the right. */
export const onCircle = (at: Px, r: number, degrees: number): Px => ({
  x: at.x + r * cos(degrees),
  y: at.y - r * sin(degrees),
});

/** Part of a circle between two directions, anticlockwise from the first; closed to the centre as a sector. */
export function arcPath(at: Px, r: number, from: number, to: number, sector: boolean): string {
  const a = onCircle(at, r, from);
  const b = onCircle(at, r, to);
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  const sweep = to >= from ? 0 : 1;
  const bow = `M${round(a.x)} ${round(a.y)}A${round(r)} ${round(r)} 0 ${large} ${sweep} ${round(b.x)} ${round(b.y)}`;
  return sector ? `${bow}L${round(at.x)} ${round(at.y)}Z` : bow;
}
