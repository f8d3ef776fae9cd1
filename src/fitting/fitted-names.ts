import type { Ask } from '../order/ask.ts';
import { feetInUse } from '../order/feet.ts';
import type { InputName } from '../plan/names.ts';

/** Inputs that a reading of the day may replace, for the brackets and struts in use, in the order of the work. */
export const fittedNames = (ask: Ask): readonly InputName[] => [
  ...(['transom_thickness', 'lower_bracket_height', 'shaft_offset', 'shim_count', 'shim_thickness'] as const),
  ...(ask('lower_flange_hinged') === true ? [] : (['wedge_edge'] as const)),
  ...(['shaft_foot_height', 'shaft_lean', 'shaft_side_lean', 'upper_bracket_height'] as const),
  ...feetInUse(ask).flatMap((side) => [`${side}_foot_y`, `${side}_foot_height`] as const),
  ...(['foot_pad', 'foot_standoff'] as const),
];
