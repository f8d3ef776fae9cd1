import type { Limit } from '../../src/drawings/limits.ts';
import type { Values } from '../../src/drawings/values.ts';
import type { CellName } from '../../src/plan/names.ts';

/** The case at the end of the model: a reverse transom, invented. */
export const inputs: Readonly<Record<string, number | boolean>> = {
  transom_rake: -10,
  transom_camber_radius: 0,
  transom_top: 900,
  transom_bottom: 40,
  transom_half_breadth: 600,
  transom_half_breadth_low: 400,
  transom_thickness: 18,
  inner_skin: 3,
  core_removed: false,
  rudder_overhang: 35,
  rudder_overhang_foot: 58,
  main_rudder_head: -100,
  main_rudder_foot: -1200,
  rudder_stock_ahead: 450,
  main_rudder_swing: 35,
  heel_angle: 20,
  shaft_length: 1000,
  tube_od: 60.3,
  tube_wall: 3.9,
  stock_diameter: 40,
  drive_overlap: 150,
  drive_forward: 70,
  lower_clamp_depth: 80,
  lower_reach: 160,
  lower_flange_height: 140,
  lower_flange_width: 200,
  lower_flange_hinged: true,
  lower_bolt_spacing: 140,
  upper_clamp_depth: 80,
  pin_forward: 45,
  pin_half_width: 40,
  foot_standoff: 40,
  foot_width: 60,
  foot_height: 120,
  foot_bolt_count: 2,
  foot_bolt_spacing: 80,
  strut_end_allowance: 25,
  strut_od: 33.4,
  strut_wall: 3.4,
  single_strut_od: 60.3,
  single_strut_wall: 3.9,
  bolt_diameter: 12,
  plate_area: 15000,
  flange_thickness: 10,
  foot_pad: 0,
  bed_thickness: 3,
  plate_thickness: 8,
  vane_rudder_chord: 230,
  vane_rudder_balance: 55,
  vane_rudder_span: 900,
  vane_rudder_drop: 150,
  vane_rudder_swing: 45,
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
};

type Given = Readonly<Record<string, number | boolean | null>>;

const rad = Math.PI / 180;

/** Results the drawings letter or place things by, worked out from the model's definitions for a flat transom. */
export function withResults(overrides: Given = {}): Record<string, number | boolean | null> {
  const all: Record<string, number | boolean | null> = { ...inputs, ...overrides };
  const n = (name: string): number => {
    const value = all[name];
    return typeof value === 'number' ? value : Number.NaN;
  };
  const tanR = Math.tan(n('transom_rake') * rad);
  const cosR = Math.cos(n('transom_rake') * rad);
  const tanL = Math.tan(n('shaft_lean') * rad);
  const c = Math.cos(n('shaft_lean') * rad);
  const radius = n('transom_camber_radius');
  const camber = radius === 0 ? 0 : radius - Math.sqrt(radius ** 2 - n('shaft_offset') ** 2);
  const face = (z: number): number => z * tanR - camber;
  const shim_stack = n('shim_count') * n('shim_thickness');
  const wedge_middle =
    all.lower_flange_hinged === true
      ? 0
      : n('wedge_edge') + 0.5 * n('lower_flange_height') * c * Math.abs(tanR - tanL);
  const standoff = shim_stack / cosR + wedge_middle + n('lower_reach');
  const low = n('lower_bracket_height');
  const high = n('upper_bracket_height');
  const shaft_x = face(low) + standoff;
  const axis = (z: number): number => shaft_x + (z - low) * tanL;
  const foot = n('shaft_foot_height');
  const top = foot + n('shaft_length') * c;
  const least = (from: number, to: number, gap: (z: number) => number): number | null =>
    from > to ? null : Math.min(gap(from), gap(to));
  const vaneHead = foot - n('vane_rudder_drop') * c;
  const edge = (z: number): number =>
    n('rudder_overhang') +
    ((n('rudder_overhang_foot') - n('rudder_overhang')) * (n('main_rudder_head') - z)) /
      (n('main_rudder_head') - n('main_rudder_foot'));
  const shared = [
    Math.max(n('main_rudder_foot'), vaneHead - n('vane_rudder_span') * c),
    Math.min(n('main_rudder_head'), vaneHead),
  ] as const;
  const rudder_gap = least(shared[0], shared[1], (z) => axis(z) - n('vane_rudder_balance') - edge(z));
  const results: Record<string, number | null> = {
    shim_stack,
    wedge_middle,
    standoff,
    shaft_x,
    shaft_top_height: top,
    bearing_gap: (low - foot) / c - n('lower_clamp_depth') / 2,
    bracket_spacing: (high - low) / c,
    drive_headroom: (top - high) / c - n('upper_clamp_depth') / 2 - n('drive_overlap'),
    shaft_face_gap: least(
      Math.max(n('transom_bottom'), foot),
      Math.min(n('transom_top'), top),
      (z) => axis(z) - n('tube_od') / 2 / c - face(z),
    ),
    drive_face_gap: least(
      top - n('drive_overlap') * c,
      n('transom_top'),
      (z) => axis(z) - n('drive_forward') - face(z),
    ),
    lowest_hole:
      low * Math.cos(n('heel_angle') * rad) -
      (Math.abs(n('shaft_offset')) + n('lower_bolt_spacing') / 2) * Math.sin(n('heel_angle') * rad),
    vane_rudder_head: vaneHead,
    rudder_gap,
    rudder_gap_swung: rudder_gap,
    rudder_gap_vertical: rudder_gap === null ? shared[0] - shared[1] : null,
    lower_bracket_edge: Math.min(
      low - n('lower_flange_height') / 2 - n('transom_bottom'),
      n('transom_top') - low - n('lower_flange_height') / 2,
      n('transom_half_breadth_low') - Math.abs(n('shaft_offset')) - n('lower_flange_width') / 2,
    ),
    port_foot_edge: Math.min(
      n('port_foot_height') - n('foot_height') / 2 - n('transom_bottom'),
      n('transom_top') - n('port_foot_height') - n('foot_height') / 2,
      n('transom_half_breadth') - Math.abs(n('port_foot_y')) - n('foot_width') / 2,
    ),
    starboard_foot_edge: Math.min(
      n('starboard_foot_height') - n('foot_height') / 2 - n('transom_bottom'),
      n('transom_top') - n('starboard_foot_height') - n('foot_height') / 2,
      n('transom_half_breadth') - Math.abs(n('starboard_foot_y')) - n('foot_width') / 2,
    ),
    single_foot_edge: 50,
    strut_spread: 61.2579,
  };
  for (const [name, value] of Object.entries(results)) {
    all[name] = typeof value === 'number' && Number.isFinite(value) ? value : null;
  }
  return { ...all, ...Object.fromEntries(Object.entries(overrides).filter(([, value]) => value === null)) };
}

export const valuesFrom = (record: Given): Values => ({
  number: (name) => {
    const value = record[name];
    return typeof value === 'number' ? value : null;
  },
  flag: (name) => {
    const value = record[name];
    return typeof value === 'boolean' ? value : null;
  },
});

/** The case, with what a test changes in it. */
export const caseValues = (overrides: Given = {}): Values => valuesFrom(withResults(overrides));

const bounds: Readonly<Record<string, readonly [low: number | null, high: number | null, band: number]>> = {
  rudder_gap: [50, null, 10],
  rudder_gap_swung: [50, null, 10],
  shaft_face_gap: [25, null, 10],
  drive_face_gap: [25, null, 10],
  bearing_gap: [50, 250, 10],
  bracket_spacing: [300, null, 10],
  drive_headroom: [12, null, 5],
  lowest_hole: [50, null, 10],
  shim_stack: [null, 75, 5],
  strut_spread: [45, 90, 3],
  lower_bracket_edge: [0, null, 10],
  port_foot_edge: [0, null, 10],
  starboard_foot_edge: [0, null, 10],
};

/** The limits a drawing letters, judged on the values. */
export function judge(values: Values): Limit[] {
  return (Object.entries(bounds) as [CellName, (typeof bounds)[string]][]).map(
    ([name, [low, high, band]]): Limit => {
      const value = values.number(name);
      if (value === null) return { name, state: 'no answer', value, low, high };
      const room = Math.min(low === null ? Infinity : value - low, high === null ? Infinity : high - value);
      return { name, state: room < 0 ? 'outside' : room < band ? 'near' : 'inside', value, low, high };
    },
  );
}

/** Colour tokens of the page. */
export const screenPalette = {
  film: '#E8EEEC',
  sheet: '#FBFCFB',
  water: '#CFDEE4',
  'mark-wash': '#F3E2EB',
  ink: '#14252D',
  soft: '#40525B',
  edge: '#66777E',
  mark: '#8C1A5B',
} as const;
