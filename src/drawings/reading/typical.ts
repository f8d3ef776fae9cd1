import { cos, tan } from '../../calc/angle.ts';
import { standoff } from '../../calc/shaft/standoff.ts';
import { wedgeMiddle } from '../../calc/shaft/wedge-middle.ts';
import { camber } from '../../calc/transom/face-x.ts';
import type { CellName } from '../../plan/names.ts';
import type { Values } from '../values.ts';

/**
 * Sizes that a picture is drawn with while a reading is still missing. They are nobody's boat and are never lettered:
 * the figure beside such a part is a question mark.
 */
const sizes: Readonly<Record<string, number>> = {
  transom_rake: -12,
  transom_camber_radius: 0,
  transom_top: 900,
  transom_bottom: 50,
  transom_half_breadth: 600,
  transom_half_breadth_low: 420,
  transom_thickness: 20,
  inner_skin: 4,
  rudder_overhang: 40,
  rudder_overhang_foot: 60,
  main_rudder_head: -100,
  main_rudder_foot: -1150,
  rudder_stock_ahead: 420,
  main_rudder_swing: 35,
  heel_angle: 20,
  shaft_length: 1000,
  tube_od: 60,
  tube_wall: 4,
  stock_diameter: 40,
  bearing_gap_min: 50,
  bearing_gap_max: 250,
  spacing_min: 350,
  drive_overlap: 150,
  drive_forward: 70,
  drive_gap_min: 20,
  face_gap_min: 25,
  lower_clamp_depth: 80,
  upper_clamp_depth: 80,
  lower_reach: 160,
  lower_flange_height: 140,
  lower_flange_width: 200,
  lower_bolt_spacing: 140,
  shim_stack_max: 75,
  pin_forward: 50,
  pin_half_width: 40,
  foot_standoff: 45,
  foot_width: 120,
  foot_height: 120,
  foot_bolt_count: 2,
  foot_bolt_spacing: 80,
  strut_end_allowance: 25,
  strut_od: 34,
  strut_wall: 3.4,
  single_strut_od: 60,
  single_strut_wall: 4,
  strut_supply_length: 800,
  strut_supply_count: 2,
  single_strut_max: 450,
  saw_kerf: 2,
  spread_min: 45,
  spread_max: 90,
  strut_rise_max: 30,
  flange_yaw_max: 2,
  bolt_diameter: 10,
  plate_area: 6400,
  plate_thickness: 8,
  flange_thickness: 10,
  foot_pad: 6,
  bed_thickness: 3,
  vane_rudder_chord: 230,
  vane_rudder_balance: 55,
  vane_rudder_span: 900,
  vane_rudder_drop: 150,
  vane_rudder_swing: 40,
  shim_count: 4,
  shim_thickness: 12,
  wedge_edge: 3,
  shaft_offset: 0,
  shaft_foot_height: 100,
  shaft_lean: 0,
  lower_bracket_height: 250,
  upper_bracket_height: 800,
  strut_count: 2,
  port_foot_y: -170,
  port_foot_height: 790,
  starboard_foot_y: 170,
  starboard_foot_height: 790,
  single_foot_y: 0,
  single_foot_height: 790,
  rudder_gap_min: 50,
  list_reading: 8,
  trim_mark_stern: 60,
  trim_mark_forward: -60,
  tape_zero_height: 180,
  rudder_line_aft: 160,
  drive_height: 300,
  drive_sweep_radius: 150,
  vane_low: 200,
  vane_high: 1000,
  vane_sweep_radius: 350,
};

/** Inputs that may be 0 only in name: a picture of nothing shows nothing. */
const shown = (value: number | null, size: number | undefined): number | null =>
  value !== null && Number.isFinite(value) ? value : (size ?? null);

/** The values a picture is drawn from: what is known, typical sizes for the rest, and the places that follow from both. */
export function withTypical(values: Values): Values {
  const input = (name: CellName): number => shown(values.number(name), sizes[name]) ?? 0;
  const hinged = values.flag('lower_flange_hinged') ?? true;
  const lean = input('shaft_lean');
  const rake = input('transom_rake');
  const stack = input('shim_count') * input('shim_thickness');
  const wedge = wedgeMiddle(hinged, input('wedge_edge'), input('lower_flange_height'), lean, rake);
  const radius = input('transom_camber_radius');
  const face = input('lower_bracket_height') * tan(rake) - camber(input('shaft_offset'), radius);
  const results: Readonly<Record<string, number>> = {
    shim_stack: stack,
    wedge_middle: wedge,
    shaft_x: face + standoff(stack, rake, wedge, input('lower_reach')),
    shaft_top_height: input('shaft_foot_height') + input('shaft_length') * cos(lean),
    vane_rudder_head: input('shaft_foot_height') - input('vane_rudder_drop') * cos(lean),
  };
  return {
    number: (name) => results[name] ?? shown(values.number(name), sizes[name]),
    flag: (name) => (name === 'lower_flange_hinged' ? hinged : values.flag(name)),
  };
}
