import type { Nodes } from './nodes.ts';

/** Share of a triangle on which a number that runs straight between its corners is not negative. */
function shareOfTriangle(a: number, b: number, c: number): number {
  const [low, high] = [Math.min(a, b, c), Math.max(a, b, c)];
  if (low >= 0) return 1;
  if (high < 0) return 0;
  const middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  // The part cut off at the corner that stands alone on its side is similar to the whole along both its sides.
  if (middle < 0) return (high / (high - low)) * (high / (high - middle));
  return 1 - (low / (low - high)) * (low / (low - middle));
}

/** A stretch without limit in one corner counts as a whole one. */
const bounded = (value: number): number => Math.min(1, value);

/** Share of a picture's area on which a number known at its nodes is not negative, 0 to 1. */
export function holdingShare(x: Nodes, y: Nodes, depth: (i: number, j: number) => number): number {
  const at = (i: number, j: number): number => bounded(depth(x.of[i] as number, y.of[j] as number));
  let [held, whole] = [0, 0];
  for (let j = 0; j + 1 < y.at.length; j++) {
    const height = (y.at[j + 1] as number) - (y.at[j] as number);
    if (height === 0) continue;
    for (let i = 0; i + 1 < x.at.length; i++) {
      const area = ((x.at[i + 1] as number) - (x.at[i] as number)) * height;
      if (area === 0) continue;
      const [a, b, c, d] = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)] as const;
      // Both ways of halving a cell count alike.
      const halves =
        shareOfTriangle(a, b, c) +
        shareOfTriangle(a, c, d) +
        shareOfTriangle(a, b, d) +
        shareOfTriangle(b, c, d);
      held += (area * halves) / 4;
      whole += area;
    }
  }
  return whole === 0 ? 0 : held / whole;
}
