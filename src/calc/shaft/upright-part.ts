import { cos, tan } from '../angle.ts';
import type { Argument } from '../record.ts';

/** The upright part of a unit length along a shaft that leans fore and aft and athwart: 1/√(1 + tan²α + tan²β). */
export function uprightPart(lean: number, sideLean: number): number {
  if (sideLean === 0) return cos(lean);
  const aft = tan(lean);
  const aside = tan(sideLean);
  return 1 / Math.sqrt(1 + aft * aft + aside * aside);
}

export const leanArgument: Argument = { name: 'lean', unit: 'deg', meaning: "The shaft's lean" };

/** The optional last argument of every function that follows the shaft. */
export const sideLeanArgument = {
  name: 'side_lean',
  unit: 'deg',
  meaning: "The shaft's lean to starboard",
  default: 0,
} as const satisfies Argument;
