/** Lettering with a place it would like to have. */
export interface Letter {
  readonly text: string;
  readonly at: number;
}

/** Moves letterings apart along their line so that none covers another, each as near to its place as can be. */
export function apart<L extends Letter>(
  letters: readonly L[],
  gap: number,
  low: number,
  high: number,
): (L & { readonly placed: number })[] {
  const sorted = [...letters].sort((a, b) => a.at - b.at);
  const placed = sorted.map((it) => Math.min(high, Math.max(low, it.at)));
  for (let i = 1; i < placed.length; i++) {
    placed[i] = Math.max(placed[i] as number, (placed[i - 1] as number) + gap);
  }
  let limit = high;
  for (let i = placed.length - 1; i >= 0; i--) {
    placed[i] = Math.min(placed[i] as number, limit);
    limit = (placed[i] as number) - gap;
  }
  return sorted.map((it, i) => ({ ...it, placed: placed[i] as number }));
}
