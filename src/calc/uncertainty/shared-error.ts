/** The law within which a reading's error lies. */
export type Law = 'rectangular' | 'normal';

/**
 * The correlation of two readings whose normal scores have the correlation given. A rectangular error is its score's
 * chance stretched over the half-width, so that the correlation is weaker: 6/π·asin(ρ/2) for two of them, √(3/π)·ρ
 * for one beside a normal one (K. Pearson, 1907; from memory, held against sampling in the tests).
 */
export function correlationOf(score: number, a: Law, b: Law): number {
  if (a === 'normal' && b === 'normal') return score;
  if (a === b) return (6 / Math.PI) * Math.asin(score / 2);
  return Math.sqrt(3 / Math.PI) * score;
}
