import { tan } from '../angle.ts';
import type { Argument } from '../record.ts';
import { leanArgument, sideLeanArgument, uprightPart } from './upright-part.ts';

/** How much thicker a wedge is at one edge of its flange than at the other, mm, measured level. */
export const wedgeTaper = (flangeHeight: number, lean: number, slope: number, sideLean: number): number =>
  flangeHeight * uprightPart(lean, sideLean) * Math.abs(tan(slope) - tan(lean));

export const hingedArgument: Argument = {
  name: 'hinged',
  unit: '–',
  meaning: 'Whether the flange is hinged',
  type: 'flag',
};

export const slopeArgument: Argument = { name: 'slope', unit: 'deg', meaning: "The transom's slope" };

export const wedgeArguments: readonly Argument[] = [
  hingedArgument,
  { name: 'edge', unit: 'mm', meaning: "The wedge's thin edge", least: 0 },
  { name: 'flange_height', unit: 'mm', meaning: "The flange's height", least: 0 },
  leanArgument,
  slopeArgument,
  sideLeanArgument,
];
