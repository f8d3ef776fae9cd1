import type { InputCell } from '../../plan/template.ts';

/** Choices as they lie on the boat, from the top down; the foot of the shaft last. */
const BY_HEIGHT: readonly string[] = [
  'upper_bracket_height',
  'strut_count',
  'port_foot_height',
  'port_foot_y',
  'starboard_foot_height',
  'starboard_foot_y',
  'single_foot_height',
  'single_foot_y',
  'lower_bracket_height',
  'shim_count',
  'shim_thickness',
  'wedge_edge',
  'shaft_offset',
  'shaft_lean',
  'shaft_foot_height',
];

/** Cells in that order; any it does not name keep theirs, at the end. */
export function byHeight(cells: readonly InputCell[]): readonly InputCell[] {
  const at = ({ name }: InputCell): number => {
    const place = BY_HEIGHT.indexOf(name);
    return place < 0 ? BY_HEIGHT.length : place;
  };
  return [...cells].sort((a, b) => at(a) - at(b));
}
