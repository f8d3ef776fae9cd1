import type { SweepPoint } from '../../studies/sweep.ts';
import { readAt } from './read-at.ts';

/** The same result in another scenario. */
export interface OtherLine {
  readonly name: string;
  readonly points: readonly SweepPoint[];
}

/** A line laid over the chart's own. */
export interface LaidOver {
  /** Its scenario, and how many more run exactly there. */
  readonly name: string;
  /** Its value at each of the chart's points. */
  readonly values: readonly (number | null)[];
}

const LONGEST = 18;

/** A name short enough to stand beside the plot. */
export const shortened = (name: string): string =>
  name.length > LONGEST ? `${name.slice(0, LONGEST - 1).trimEnd()}…` : name;

const andMore = (name: string, more: number): string =>
  more === 0 ? shortened(name) : `${shortened(name)}, ${more} more`;

const same = (a: readonly (number | null)[], b: readonly (number | null)[]): boolean =>
  a.every((it, i) => it === b[i]);

/** The lines to lay over one, each place once: lines that run the same share it. */
export function laidOver(
  points: readonly SweepPoint[],
  result: number,
  scenario: string | undefined,
  others: readonly OtherLine[],
): { readonly own: string | undefined; readonly lines: readonly LaidOver[] } {
  const values = points.map((it) => it.values[result] ?? null);
  const found: { names: string[]; values: readonly (number | null)[] }[] = [
    { names: scenario === undefined ? [] : [scenario], values },
  ];
  for (const other of others) {
    const there = points.map(({ x }) => readAt(other.points, result, x).value);
    const twin = found.find((it) => same(it.values, there));
    if (twin === undefined) found.push({ names: [other.name], values: there });
    else twin.names.push(other.name);
  }
  const [own, ...rest] = found.map((it) => ({
    name: it.names[0] === undefined ? undefined : andMore(it.names[0], it.names.length - 1),
    values: it.values,
  }));
  return { own: own?.name, lines: rest.map((it) => ({ name: it.name ?? '', values: it.values })) };
}
