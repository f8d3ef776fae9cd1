import { type Px, round } from './px.ts';

/** Path text through the points. */
export function pathThrough(points: readonly Px[], closed: boolean): string {
  let d = '';
  for (const [i, p] of points.entries()) d += `${i === 0 ? 'M' : 'L'}${round(p.x)} ${round(p.y)}`;
  return closed ? `${d}Z` : d;
}

export const line = (a: Px, b: Px): string => `M${round(a.x)} ${round(a.y)}L${round(b.x)} ${round(b.y)}`;
