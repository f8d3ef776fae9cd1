import { NoAnswer } from '../calc/answer.ts';
import { cutFromTubes } from '../calc/cutting/cut.ts';
import type { StrutPiece } from './strut-piece.ts';

/** Tubes as they are supplied. */
export interface TubeStock {
  /** Length of one, mm. */
  readonly supply: number;
  readonly kerf: number;
  readonly supplied: number;
}

/** The struts nested on the tubes supplied, with the fewest tubes. */
export interface StrutNest {
  /** Each supplied tube that is cut: its pieces by name, and what is left of it after the saw. */
  readonly tubes: readonly { readonly pieces: readonly string[]; readonly left: number }[];
  /** Supplied tubes that stay whole; negative when some are missing. */
  readonly spare: number;
  /** Tubes needed when every strut is first cut as long as its trial tube; undefined when one is then too long. */
  readonly longTubes: number | undefined;
  /** Tubes needed when the trial tubes come from them too; undefined when one is too long. */
  readonly withTrial: number | undefined;
}

/** Pieces by name for each tube of a cutting plan that knows them by length alone. */
function named(tubes: readonly (readonly number[])[], pieces: readonly StrutPiece[]): string[][] {
  const left = [...pieces];
  return tubes.map((tube) =>
    tube.map((length) => {
      const at = left.findIndex((it) => it.cut === length);
      return left.splice(at, 1)[0]?.name ?? '';
    }),
  );
}

function tubesFor(lengths: readonly number[], { supply, kerf }: TubeStock): number | undefined {
  const plan = cutFromTubes(lengths, supply, kerf);
  return plan instanceof NoAnswer ? undefined : plan.tubes.length;
}

/** Nothing when a strut is not there to cut or longer than a tube. */
export function nestStruts(pieces: readonly StrutPiece[], stock: TubeStock): StrutNest | undefined {
  const cuts = pieces.map((it) => it.cut);
  const trials = pieces.map((it) => it.trial);
  const plan = cutFromTubes(cuts, stock.supply, stock.kerf);
  if (plan instanceof NoAnswer) return undefined;
  return {
    tubes: named(plan.tubes, pieces).map((it, i) => ({ pieces: it, left: plan.left[i] ?? 0 })),
    spare: stock.supplied - plan.tubes.length,
    longTubes: tubesFor(trials, stock),
    withTrial: tubesFor([...cuts, ...trials], stock),
  };
}

const listed = (pieces: readonly StrutPiece[], l: (mm: number) => string, and: string): string =>
  pieces.map(({ name, cut }) => `the ${name.toLowerCase()}, ${l(cut)}`).join(`, ${and} `);

const feet = (pieces: readonly StrutPiece[]): string => (pieces.length === 1 ? 'its foot' : 'the feet');

/** Why the struts are not nested: a sentence for those that are not there to cut, and one for those too long. */
export function whyNotNested(
  pieces: readonly StrutPiece[],
  { supply }: TubeStock,
  l: (mm: number) => string,
): string[] {
  const gone = pieces.filter((it) => !(it.cut > 0));
  const long = pieces.filter((it) => it.cut > supply);
  return [
    ...(gone.length === 0
      ? []
      : [
          `Nothing is left to cut for ${listed(gone, l, 'and')}: the ends are longer than the way between the pins. Move ${feet(gone)} further from the clamp.`,
        ]),
    ...(long.length === 0
      ? []
      : [
          `No tube gives ${listed(long, l, 'or')}: those supplied are ${l(supply)} long. Order longer tube of the same size, or move ${feet(long)} nearer to the clamp.`,
        ]),
  ];
}
