/** Median and 95th percentile of some times, ms, to a thousandth. */
export interface Times {
  readonly median: number;
  readonly p95: number;
  readonly count: number;
}

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

export function timesOf(values: readonly number[]): Times {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { median: rounded(at(0.5)), p95: rounded(at(0.95)), count: sorted.length };
}
