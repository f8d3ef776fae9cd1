import type { Ask } from '../order/ask.ts';
import { feetInUse } from '../order/feet.ts';

/** Inputs that a reading of the day may replace, for the brackets and struts in use, in the order of the work. */
export const fittedNames = (ask: Ask): readonly string[] => [
  ...['transom_thickness', 'lower_bracket_height', 'shaft_offset', 'shim_count', 'shim_thickness'],
  ...(ask('lower_flange_hinged') === true ? [] : ['wedge_edge']),
  ...['shaft_foot_height', 'shaft_lean', 'shaft_side_lean', 'upper_bracket_height'],
  ...feetInUse(ask).flatMap((side) => [`${side}_foot_y`, `${side}_foot_height`]),
  ...['foot_pad', 'foot_standoff'],
];
