import type { InputCell } from '../../plan/template.ts';
import type { SweepCall } from './registry.ts';

/** Values looked at along an input that is not a whole number. */
const POINTS = 41;

/** A sweep of an input over its usual range. */
export function sweepAsk(
  { name, usual, type, only }: InputCell,
  results: readonly string[],
  scenario: string | null,
): SweepCall {
  const [low, high] = usual ?? [0, 1];
  return { scenario, input: name, results, low, high, whole: type === 'whole', only, points: POINTS };
}
