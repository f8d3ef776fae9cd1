import type { Swept } from '../../studies/sweep.ts';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** One bound of one limit as it runs along a sweep, without a break. */
export interface Edge {
  readonly limit: string;
  /** Which side of it is forbidden. */
  readonly forbids: 'below' | 'above';
  readonly spots: readonly Spot[];
}

/** Neighbouring spots with a place of their own; those between two at the same height are left out. */
function runs(spots: readonly (Spot | undefined)[]): Spot[][] {
  const found: Spot[][] = [];
  let isOpen = false;
  for (const spot of spots) {
    if (spot === undefined) {
      isOpen = false;
      continue;
    }
    if (!isOpen) found.push([]);
    isOpen = true;
    const run = found.at(-1) as Spot[];
    const [before, last] = run.slice(-2);
    if (before !== undefined && last?.y === spot.y && before.y === spot.y) run.pop();
    run.push(spot);
  }
  return found.filter((run) => run.length > 1);
}

/** Where the bounds of the limits on one result run; a bound that follows what is swept runs aslant. */
export function edgesOf({ points }: Swept, limits: ReadonlySet<string>): readonly Edge[] {
  const found: Edge[] = [];
  for (const [i, { name }] of (points[0]?.limits ?? []).entries()) {
    if (!limits.has(name)) continue;
    for (const side of ['low', 'high'] as const) {
      const spots = points.map(({ x, limits: there }): Spot | undefined => {
        const limit = there[i];
        const y = limit?.[side] ?? null;
        return limit === undefined || limit.state === 'does not apply' || y === null ? undefined : { x, y };
      });
      for (const run of runs(spots)) {
        found.push({ limit: name, forbids: side === 'low' ? 'below' : 'above', spots: run });
      }
    }
  }
  return found;
}
