import type { Mapped } from './map.ts';
import { type Nodes, nodesOf, stretchAt } from './nodes.ts';

/** How a map stands at one place, read off between its points. */
export type Ground =
  | { readonly is: 'allowed' }
  | { readonly is: 'refused' }
  /** The limit that is furthest outside, and how many more are. */
  | { readonly is: 'failing'; readonly limit: string; readonly more: number };

/** Reads ground and results off a map at any place in it. */
export class MapReader {
  readonly x: Nodes;
  readonly y: Nodes;
  readonly #mapped: Mapped;

  constructor(mapped: Mapped) {
    this.#mapped = mapped;
    this.x = nodesOf(mapped.xs, mapped.ask.x.whole);
    this.y = nodesOf(mapped.ys, mapped.ask.y.whole);
  }

  /** A number known at the map's points, at a place between them; NaN next to a point that has none. */
  read(values: ArrayLike<number>, x: number, y: number): number {
    const { xs } = this.#mapped;
    const [i, j] = [stretchAt(this.x, x), stretchAt(this.y, y)];
    const at = (a: number, b: number): number =>
      values[(this.y.of[b] as number) * xs.length + (this.x.of[a] as number)] as number;
    const row = (b: number): number => {
      const [left, right] = [at(i.from, b), i.share === 0 ? 0 : at(i.from + 1, b)];
      return i.share === 0 ? left : left + (right - left) * i.share;
    };
    return j.share === 0 ? row(j.from) : row(j.from) + (row(j.from + 1) - row(j.from)) * j.share;
  }

  ground(x: number, y: number): Ground {
    const { limits, refused } = this.#mapped;
    if (this.read(refused, x, y) >= 0.5) return { is: 'refused' };
    const failing = limits
      .map(({ name, depth }) => ({ name, depth: this.read(depth, x, y) }))
      .filter((it) => it.depth < 0)
      .sort((a, b) => a.depth - b.depth);
    const [worst] = failing;
    return worst === undefined
      ? { is: 'allowed' }
      : { is: 'failing', limit: worst.name, more: failing.length - 1 };
  }
}
