import { tan } from '../../calc/angle.ts';
import { standoff } from '../../calc/shaft/standoff.ts';
import { upright } from '../../calc/shaft/upright.ts';
import { wedgeMiddle } from '../../calc/shaft/wedge-middle.ts';
import { camber } from '../../calc/transom/face-x.ts';
import { cellNamed } from '../../plan/book.ts';
import type { CellName } from '../../plan/names.ts';
import type { Values } from '../values.ts';

/** Sizes where the template starts at 0, which would show nothing. */
const sizes: Readonly<Partial<Record<CellName, number>>> = {
  foot_pad: 6,
  list_reading: 8,
  trim_mark_stern: 60,
  trim_mark_forward: -60,
  tape_zero_height: 180,
  rudder_line_aft: 160,
};

/**
 * The size a picture is drawn with while a reading is still missing. It is nobody's boat and is never lettered: the
 * figure beside such a part is a question mark.
 */
function sizeOf(name: CellName): number | null {
  const cell = cellNamed(name);
  const standIn = sizes[name] ?? (cell !== undefined && 'value' in cell ? cell.value : null);
  return typeof standIn === 'number' ? standIn : null;
}

const shown = (value: number | null, name: CellName): number | null =>
  value !== null && Number.isFinite(value) ? value : sizeOf(name);

/** The values a picture is drawn from: what is known, typical sizes for the rest, and the places that follow from both. */
export function withTypical(values: Values): Values {
  const input = (name: CellName): number => shown(values.number(name), name) ?? 0;
  const hinged = values.flag('lower_flange_hinged') ?? true;
  const lean = input('shaft_lean');
  const sideLean = values.number('shaft_side_lean') ?? 0;
  const rake = input('transom_rake');
  const stack = input('shim_count') * input('shim_thickness');
  const wedge = wedgeMiddle(hinged, input('wedge_edge'), input('lower_flange_height'), lean, rake, sideLean);
  const radius = input('transom_camber_radius');
  const face = input('lower_bracket_height') * tan(rake) - camber(input('shaft_offset'), radius);
  const results: Readonly<Record<string, number>> = {
    shim_stack: stack,
    wedge_middle: wedge,
    shaft_x: face + standoff(stack, rake, wedge, input('lower_reach')),
    shaft_top_height: input('shaft_foot_height') + upright(input('shaft_length'), lean, sideLean),
    vane_rudder_head: input('shaft_foot_height') - upright(input('vane_rudder_drop'), lean, sideLean),
  };
  return {
    number: (name) => results[name] ?? shown(values.number(name), name),
    flag: (name) => (name === 'lower_flange_hinged' ? hinged : values.flag(name)),
  };
}
