import { type Answer, NoAnswer } from '../answer.ts';
import type { Argument } from '../record.ts';
import { boltSize, diameterArgument } from './iso.ts';
import { packingFactor } from './packing-factor.ts';

/** Shear strength as a share of tensile strength. */
const SHEAR = 0.6;

export type BoltGiven = readonly [diameter: number, strength: number, safety: number, packing: number];

export const boltArguments: readonly Argument[] = [
  diameterArgument,
  { name: 'strength', unit: 'MPa', meaning: "The bolt's tensile strength", above: 0 },
  { name: 'safety', unit: '–', meaning: "The factor on the bolt's strength", above: 0 },
  { name: 'packing', unit: 'mm', meaning: 'The packing’s thickness', least: 0 },
];

/** A bolt's share under tension and shear together, the two squared and summed (AISC 360 Commentary J3). */
export function boltShare(
  ...[diameter, strength, safety, packing]: BoltGiven
): ((tension: number, shear: number) => number) | NoAnswer {
  const size = boltSize(diameter);
  if (size instanceof NoAnswer) return size;
  const bears = (size.stressArea * strength) / safety;
  const bearsInShear = SHEAR * bears * packingFactor(diameter, packing);
  return (tension, shear) => Math.sqrt((tension / bears) ** 2 + (shear / bearsInShear) ** 2);
}

/** The worst share over the tensions and shears of several load cases. */
export function worstShare(bolt: BoltGiven, cases: Iterable<{ tension: number; shear: number }>): Answer {
  const share = boltShare(...bolt);
  if (share instanceof NoAnswer) return share;
  let worst = 0;
  for (const { tension, shear } of cases) worst = Math.max(worst, share(tension, shear));
  return worst;
}
