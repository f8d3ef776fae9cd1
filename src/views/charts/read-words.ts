import type { SweepPoint } from '../../studies/sweep.ts';
import { capital, told, type Words } from '../../studies/words.ts';
import { readAt } from './read-at.ts';

/** Where in a chart is read. */
export interface Reading {
  readonly points: readonly SweepPoint[];
  /** Which of the results. */
  readonly index: number;
  readonly input: string;
  readonly result: string;
  /** The limits on that result. */
  readonly limits: ReadonlySet<string>;
}

/** What a chart says at one value: `4 shims: rudder gap 56.9 mm, near.` */
export function readWords(
  { points, index, input, result, limits }: Reading,
  at: number,
  words: Words,
): string {
  const head = capital(told(words.cell(input), at));
  const { value, about, refused } = readAt(points, index, at);
  if (refused !== undefined) return `${head}: ${refused}`;
  if (value === null) return `${head}: no answer.`;
  const { short, figure } = words.cell(result);
  const here = points.find((it) => it.x === at)?.limits.filter((it) => limits.has(it.name)) ?? [];
  const state = (['outside', 'near'] as const).find((it) => here.some((limit) => limit.state === it));
  return `${head}: ${short} ${about ? 'about ' : ''}${figure(value)}${state === undefined ? '' : `, ${state}`}.`;
}
