import { cross, dot, size, solve, type V } from '../apart/geometry.ts';

/** A flange that lies on a face: directions on it, its size, and where its bolts are, from its middle, mm. */
export interface Flange {
  readonly out: V;
  readonly level: V;
  readonly up: V;
  readonly width: number;
  readonly height: number;
  readonly bolts: readonly (readonly [aside: number, above: number])[];
}

/** What loads a flange at its middle, N and N·mm. */
export interface Load {
  readonly force: V;
  readonly moment: V;
}

/** Forces at places from the flange's middle, and a turn, as one load there. */
export const gathered = (forces: readonly (readonly [from: V, force: V])[], turn: V = [0, 0, 0]): Load =>
  forces.reduce<Load>(
    ({ force, moment }, [from, its]) => {
      const turns = cross(from, its);
      return {
        force: [force[0] + its[0], force[1] + its[1], force[2] + its[2]],
        moment: [moment[0] + turns[0], moment[1] + turns[1], moment[2] + turns[2]],
      };
    },
    { force: [0, 0, 0], moment: turn },
  );

/** Which corners may press at once: none, one, or two; three would let nothing move. */
const PRESSED: readonly (readonly number[])[] = [
  [],
  ...[0, 1, 2, 3].flatMap((i) => [[i], ...[0, 1, 2, 3].filter((k) => k > i).map((k) => [i, k])]),
];

/** A hair beside the load, for what should be nothing. */
const HAIR = 1e-7;

const lifts = (place: readonly number[], move: readonly number[]): number =>
  place.reduce((sum, it, i) => sum + it * (move[i] as number), 0);

/**
 * Pull of each bolt, N: the flange is rigid, the face under it gives way nowhere, bolts stretch alike and only pull. The
 * flange lifts and tilts until the bolts that it stretches and the corners it presses on balance the load. Which they are
 * is found by trying them all: only one set has bolts that all pull, corners that all press, and no corner in the face.
 */
export function pulls({ out, level, up, width, height, bolts }: Flange, { force, moment }: Load): number[] {
  const load = [dot(force, out), dot(moment, level), dot(moment, up)];
  // What a pull of 1 N out of the face at a place comes to, and how far a lift and two tilts take that place.
  const at = ([aside, above]: readonly [number, number]): number[] => [
    1,
    above * dot(cross(up, out), level),
    aside * dot(cross(level, out), up),
  ];
  const stretched = bolts.map(at);
  const corners = [-1, 1].flatMap((a) => [-1, 1].map((b) => at([(a * width) / 2, (b * height) / 2])));
  const [square = 0, tips = 0, turns = 0] = load;
  const small = HAIR * (Math.abs(square) + (Math.abs(tips) + Math.abs(turns)) / 50 + 1);
  // A load that presses within the flange's outline stretches nothing.
  if (square < 0 && Math.abs(tips) <= (-square * height) / 2 && Math.abs(turns) <= (-square * width) / 2) {
    return bolts.map(() => 0);
  }
  for (let set = 2 ** bolts.length - 1; set > 0; set--) {
    const pulling = bolts.flatMap((_, i) => ((set >> i) % 2 === 1 ? [i] : []));
    for (const pressed of PRESSED) {
      const found = balance(
        pulling.map((i) => stretched[i] as number[]),
        pressed.map((i) => corners[i] as number[]),
        load,
      );
      if (found === null) continue;
      const { move, presses } = found;
      const all = stretched.map((place) => lifts(place, move));
      const stands =
        all.every((pull, i) => (pulling.includes(i) ? pull >= -small : pull <= small)) &&
        presses.every((it) => it >= -small) &&
        corners.every((place) => lifts(place, move) >= -small);
      if (stands) return all.map((pull, i) => (pulling.includes(i) ? Math.max(0, pull) : 0));
    }
  }
  throw new Error('No bolts and corners hold this load.');
}

/** The move of the flange that has these bolts pull and these corners stand still; null where they cannot hold. */
function balance(
  bolts: readonly (readonly number[])[],
  corners: readonly (readonly number[])[],
  load: readonly number[],
): { readonly move: number[]; readonly presses: number[] } | null {
  const count = 3 + corners.length;
  const rows = Array.from({ length: count }, (_, i) =>
    Array.from({ length: count }, (_, k) => {
      if (i < 3 && k < 3) return bolts.reduce((sum, it) => sum + (it[i] as number) * (it[k] as number), 0);
      if (i < 3) return -((corners[k - 3] as readonly number[])[i] as number);
      return k < 3 ? ((corners[i - 3] as readonly number[])[k] as number) : 0;
    }),
  );
  const solved = solve(rows, [...load, ...corners.map(() => 0)]);
  if (!solved.every(Number.isFinite) || solved.some((it) => Math.abs(it) > 1e9)) return null;
  return { move: solved.slice(0, 3), presses: solved.slice(3) };
}

/** Shear of each bolt, N: all slide alike under the force along the face, and turn about their middle under the twist. */
export function shears({ out, level, up, bolts }: Flange, { force, moment }: Load): number[] {
  const n = bolts.length;
  const [aside, rises, twist] = [dot(force, level), dot(force, up), dot(moment, out)];
  const polar = bolts.reduce((sum, [a, b]) => sum + a * a + b * b, 0);
  // A twist about the outward normal moves what is to one side along `out × place`.
  return bolts.map(([a, b]) => {
    const place: V = [a * level[0] + b * up[0], a * level[1] + b * up[1], a * level[2] + b * up[2]];
    const turn = cross(out, place);
    return size([
      aside / n + (twist / polar) * dot(turn, level),
      rises / n + (twist / polar) * dot(turn, up),
      0,
    ]);
  });
}
