import { type Ask, numberOf, numbersOf } from './ask.ts';
import { type FootSide, feetInUse } from './feet.ts';
import { missingSentence } from './missing.ts';
import { nestStruts, type StrutNest, type TubeStock } from './strut-nest.ts';
import type { StrutPiece } from './strut-piece.ts';

export interface StrutOrder {
  readonly pieces: readonly StrutPiece[];
  readonly stock: TubeStock;
  /** Undefined when a strut does not come from any tube. */
  readonly nest: StrutNest | undefined;
  readonly tube: { readonly od: number; readonly wall: number } | undefined;
}

const names: Readonly<Record<FootSide, string>> = {
  port: 'Port strut',
  starboard: 'Starboard strut',
  single: 'Single strut',
};

/** The struts with the tubes they come from; or why they cannot be said. */
export function strutOrder(ask: Ask): StrutOrder | string {
  const what = 'the struts';
  const sides = feetInUse(ask);
  if (sides.length === 0) return missingSentence(what, ['strut_count']);
  const numbers = numbersOf(ask, 'strut_supply_length', 'saw_kerf', 'strut_supply_count');
  if ('missing' in numbers) return missingSentence(what, numbers.missing);
  const cuts = numbersOf(ask, ...sides.map((side) => `${side}_strut_cut` as const));
  if ('missing' in cuts) return missingSentence(what, cuts.missing);
  const extra = numberOf(ask, 'strut_trial_extra') ?? 0;
  const pieces = sides.map((side, i): StrutPiece => {
    const cut = cuts.got[i] ?? 0;
    return { side, name: names[side], cut, trial: cut + extra };
  });
  const [supply, kerf, supplied] = numbers.got;
  const stock = { supply, kerf, supplied };
  const which = sides[0] === 'single' ? 'single_strut' : 'strut';
  const [od, wall] = [numberOf(ask, `${which}_od`), numberOf(ask, `${which}_wall`)];
  return {
    pieces,
    stock,
    nest: nestStruts(pieces, stock),
    tube: od === undefined || wall === undefined ? undefined : { od, wall },
  };
}
