import { contours, type Place } from './contours.ts';
import type { Mapped } from './map.ts';
import { type Nodes, nodesOf, stretchAt } from './nodes.ts';

/** Parts that the stretch between two values is cut into, so that an edge with a corner keeps it. */
const PARTS = 3;

/** Places of a side with the stretches between its values cut up; a whole number's nodes as they are. */
function cut({ at }: Nodes, whole: boolean): Float64Array {
  if (whole) return at;
  const count = (at.length - 1) * PARTS + 1;
  return Float64Array.from({ length: count }, (_, n) => {
    const [i, part] = [Math.floor(n / PARTS), n % PARTS];
    const [a, b] = [at[i] as number, at[i + 1] ?? (at[i] as number)];
    return a + ((b - a) * part) / PARTS;
  });
}

interface Cut {
  readonly at: Float64Array;
  readonly from: readonly number[];
  readonly to: readonly number[];
  readonly share: readonly number[];
}

function cutOf(nodes: Nodes, whole: boolean): Cut {
  const at = cut(nodes, whole);
  // A whole number's nodes stand two by two at one place, so each is itself rather than looked up by its place.
  if (whole) {
    const of = [...nodes.of];
    return { at, from: of, to: of, share: of.map(() => 0) };
  }
  const stretches = [...at].map((place) => stretchAt(nodes, place));
  return {
    at,
    from: stretches.map((it) => nodes.of[it.from] as number),
    to: stretches.map((it) => nodes.of[Math.min(it.from + 1, nodes.of.length - 1)] as number),
    share: stretches.map((it) => it.share),
  };
}

/** The lines between what every limit allows and what some limit or the inputs themselves forbid. */
export function edgesOf(mapped: Mapped): Place[][] {
  const { xs, ys, ask, limits, refused } = mapped;
  const [x, y] = [cutOf(nodesOf(xs, ask.x.whole), ask.x.whole), cutOf(nodesOf(ys, ask.y.whole), ask.y.whole)];
  const fields = limits.map((it) => it.depth);
  const isRefused = refused.includes(1);
  const known = new Float64Array(x.at.length * y.at.length);
  for (let j = 0; j < y.at.length; j++) {
    const rows = [(y.from[j] as number) * xs.length, (y.to[j] as number) * xs.length] as const;
    const v = y.share[j] as number;
    for (let i = 0; i < x.at.length; i++) {
      const [a, b, u] = [x.from[i] as number, x.to[i] as number, x.share[i] as number];
      const read = (field: ArrayLike<number>): number => {
        const low = (field[rows[0] + a] as number) * (1 - u) + (field[rows[0] + b] as number) * u;
        const high = (field[rows[1] + a] as number) * (1 - u) + (field[rows[1] + b] as number) * u;
        return low * (1 - v) + high * v;
      };
      let least = isRefused ? 0.5 - read(refused) : 1;
      for (const field of fields) least = Math.min(least, read(field));
      known[j * x.at.length + i] = least;
    }
  }
  return contours({ xs: x.at, ys: y.at, at: (i, j) => known[j * x.at.length + i] as number }, 0);
}

/** The lines along which a result of a map stands at a level. */
export function levelLines(mapped: Mapped, result: number, level: number): Place[][] {
  const { xs, ys, ask, results } = mapped;
  const [x, y] = [nodesOf(xs, ask.x.whole), nodesOf(ys, ask.y.whole)];
  const values = results[result];
  if (values === undefined) return [];
  return contours(
    {
      xs: x.at,
      ys: y.at,
      at: (i, j) => values[(y.of[j] as number) * xs.length + (x.of[i] as number)] as number,
    },
    level,
  );
}
