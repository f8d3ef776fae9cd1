import { NoAnswer } from '../calc/answer.ts';
import { cutFromTubes } from '../calc/cutting/cut.ts';
import { type Ask, numberOf, numbersOf } from './ask.ts';
import { type FootSide, feetInUse } from './feet.ts';
import { missingSentence } from './missing.ts';

export interface StrutPiece {
  readonly side: FootSide;
  readonly name: string;
  readonly cut: number;
  /** Trial tube that stands in for it. */
  readonly trial: number;
}

export interface StrutOrder {
  readonly pieces: readonly StrutPiece[];
  /** Each supplied tube that is cut: its pieces by name, and what is left of it after the saw. */
  readonly tubes: readonly { readonly pieces: readonly string[]; readonly left: number }[];
  readonly supply: number;
  readonly kerf: number;
  readonly supplied: number;
  /** Supplied tubes that stay whole; negative when some are missing. */
  readonly spare: number;
  readonly tube: { readonly od: number; readonly wall: number } | undefined;
}

const names: Readonly<Record<FootSide, string>> = {
  port: 'Port strut',
  starboard: 'Starboard strut',
  single: 'Single strut',
};

/** Pieces by name for each tube of a cutting plan that knows them by length alone. */
function named(tubes: readonly (readonly number[])[], pieces: readonly StrutPiece[]): string[][] {
  const left = [...pieces];
  return tubes.map((tube) =>
    tube.map(
      (length) =>
        left.splice(
          left.findIndex((it) => it.cut === length),
          1,
        )[0]?.name ?? '',
    ),
  );
}

/** The struts nested on the tubes supplied, with the fewest tubes; or why that cannot be said. */
export function strutOrder(ask: Ask): StrutOrder | string {
  const what = 'the struts';
  const sides = feetInUse(ask);
  if (sides.length === 0) return missingSentence(what, ['strut_count']);
  const stock = numbersOf(ask, 'strut_supply_length', 'saw_kerf', 'strut_supply_count');
  if ('missing' in stock) return missingSentence(what, stock.missing);
  const cuts = numbersOf(ask, ...sides.map((side) => `${side}_strut_cut`));
  if ('missing' in cuts) return missingSentence(what, cuts.missing);
  const extra = numberOf(ask, 'strut_trial_extra') ?? 0;
  const pieces = sides.map((side, i): StrutPiece => {
    const cut = cuts.got[i] ?? 0;
    return { side, name: names[side], cut, trial: cut + extra };
  });
  const [supply, kerf, supplied] = stock.got;
  const plan = cutFromTubes(
    pieces.map((it) => it.cut),
    supply,
    kerf,
  );
  if (plan instanceof NoAnswer) return `No answer for ${what}: ${plan.why}`;
  const byName = named(plan.tubes, pieces);
  const which = sides[0] === 'single' ? 'single_strut' : 'strut';
  const [od, wall] = [numberOf(ask, `${which}_od`), numberOf(ask, `${which}_wall`)];
  return {
    pieces,
    tubes: byName.map((it, i) => ({ pieces: it, left: plan.left[i] ?? 0 })),
    supply,
    kerf,
    supplied,
    spare: supplied - byName.length,
    tube: od === undefined || wall === undefined ? undefined : { od, wall },
  };
}
