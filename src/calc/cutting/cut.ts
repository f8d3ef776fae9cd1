import { type Answer, NoAnswer } from '../answer.ts';
import { type Argument, record } from '../record.ts';
import { fewestTubes } from './fewest-tubes.ts';
import { kindsOf, piecesByTube } from './kinds.ts';
import { longestRest } from './longest-rest.ts';
import { Work } from './work.ts';

/** What cutting pieces from the fewest tubes comes to: pieces by tube, and what is left of each, mm. */
export interface CutPlan {
  readonly tubes: readonly (readonly number[])[];
  readonly left: readonly number[];
  /** Tubes that any plan needs, proven. As many as the plan takes, unless the bound on work was met. */
  readonly atLeast: number;
  /** Whether it is proven that no plan with as few tubes leaves a longer piece. */
  readonly isLeftLongest: boolean;
}

/** Steps of work given to finding the fewest tubes: some seconds. */
const STEPS_FOR_TUBES = 300_000_000;

/** Steps of work given to finding the longest rest: about a second. */
const STEPS_FOR_REST = 120_000_000;

/** What is left of a tube after its pieces: each takes a kerf, unless it ends the tube within one kerf. */
function leftOver(pieces: readonly number[], supply: number, kerf: number): number {
  const rest = supply - pieces.reduce((sum, piece) => sum + piece, 0) - (pieces.length - 1) * kerf;
  return Math.max(0, rest - kerf);
}

const fits = (pieces: readonly number[], supply: number, kerf: number): boolean =>
  pieces.reduce((sum, piece) => sum + piece, 0) + (pieces.length - 1) * kerf <= supply;

/** The plan for one or two pieces, longest first, which needs no search. */
function fewFromTubes(sorted: readonly number[], supply: number, kerf: number): CutPlan {
  const tubes = fits(sorted, supply, kerf) ? [sorted] : sorted.map((piece) => [piece]);
  const left = tubes.map((tube) => leftOver(tube, supply, kerf));
  return { tubes, left, atLeast: tubes.length, isLeftLongest: true };
}

/**
 * The cutting plan with the fewest tubes, and among those one with the longest piece left. Exact, and quick for hundreds
 * of pieces; where the bound on work is met all the same, the plan says what is proven of it. A piece that is not above
 * 0 or longer than the supply has no plan.
 */
export function cutFromTubes(pieces: readonly number[], supply: number, kerf: number): CutPlan | NoAnswer {
  for (const piece of pieces) {
    if (!(piece > 0))
      return new NoAnswer(
        `A strut comes to ${piece.toFixed(1).replace('-', '−')} mm long, so there is nothing to cut.`,
      );
    if (piece > supply) {
      return new NoAnswer(
        `A strut of ${piece.toFixed(1)} mm is longer than the tubes supplied, ${supply} mm.`,
      );
    }
  }
  const sorted = [...pieces].sort((a, b) => b - a);
  if (sorted.length === 1 || sorted.length === 2) return fewFromTubes(sorted, supply, kerf);
  const kinds = kindsOf(sorted, supply, kerf);
  const learnt = { known: [], tooFew: new Map<string, number>() };
  const fewest = fewestTubes(kinds, learnt, new Work(STEPS_FOR_TUBES));
  const { tubes: fillings, isLongest } = longestRest(kinds, fewest.tubes, learnt, STEPS_FOR_REST);
  const tubes = piecesByTube(kinds, fillings).map((places) => places.map((place) => sorted[place] as number));
  return {
    tubes,
    left: tubes.map((tube) => leftOver(tube, supply, kerf)),
    atLeast: fewest.atLeast,
    isLeftLongest: isLongest,
  };
}

const cutArguments: readonly Argument[] = [
  { name: 'supply', unit: 'mm', meaning: 'The length of a tube supplied', above: 0 },
  { name: 'kerf', unit: 'mm', meaning: "The saw's cut", least: 0 },
  { name: 'first', unit: 'mm', meaning: 'The first strut' },
  { name: 'second', unit: 'mm', meaning: 'The second strut, 0 when there is none', default: 0 },
];

const piecesOf = (first: number, second?: number): number[] =>
  second === undefined ? [first] : [first, second];

export function tubesNeeded(supply: number, kerf: number, first: number, second?: number): Answer {
  // A study asks this a hundred thousand times, nearly always of two pieces that a tube can give.
  if (second !== undefined && Math.min(first, second) > 0 && Math.max(first, second) <= supply) {
    return first + second + kerf <= supply ? 1 : 2;
  }
  const plan = cutFromTubes(piecesOf(first, second), supply, kerf);
  return plan instanceof NoAnswer ? plan : plan.tubes.length;
}

export function offcut(supply: number, kerf: number, first: number, second?: number): Answer {
  const plan = cutFromTubes(piecesOf(first, second), supply, kerf);
  return plan instanceof NoAnswer ? plan : Math.max(0, ...plan.left);
}

export const tubesNeededRecord = record({
  id: 'TUBES_NEEDED',
  title: 'Fewest supplied tubes for the struts',
  arguments: cutArguments,
  unit: '–',
  formula: 'the fewest tubes, a kerf after each piece unless it ends the tube within one kerf',
  source: 'exact search over every placing',
  example: { given: [800, 2, 399, 399], answer: 1, tolerance: 0, source: 'by hand: 399 + 2 + 399 = 800' },
  run: tubesNeeded,
});

export const offcutRecord = record({
  id: 'STRUT_OFFCUT',
  title: 'Longest piece left of the tubes used',
  arguments: cutArguments,
  unit: 'mm',
  formula: 'the longest rest of the tubes used, less a kerf',
  source: 'exact search over every placing',
  example: {
    given: [800, 2, 300, 300],
    answer: 196,
    tolerance: 1e-9,
    source: 'by hand: 800 − 300 − 2 − 300 − 2',
  },
  run: offcut,
});
