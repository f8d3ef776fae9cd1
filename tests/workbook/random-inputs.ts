import fc from 'fast-check';
import { inputs } from '../../src/plan/book.ts';
import type { InputCell } from '../../src/plan/template.ts';
import { within } from '../calc/within.ts';
import { caseInputs, type Inputs } from './model-case.ts';

/** Ranges beyond the usual ones, within what the model computes. */
const SILLY: Readonly<Record<string, readonly [number, number]>> = {
  transom_rake: [-60, 60],
  transom_top: [-500, 2500],
  transom_bottom: [-1500, 1500],
  rudder_overhang: [-1500, 2500],
  rudder_overhang_foot: [-1500, 2500],
  rudder_stock_ahead: [-1500, 2500],
  main_rudder_head: [-3000, 2000],
  main_rudder_foot: [-4000, 1500],
  main_rudder_swing: [0, 90],
  vane_rudder_swing: [0, 90],
  boat_speed: [0, 30],
  heel_angle: [0, 90],
  shaft_length: [50, 5000],
  pin_forward: [-400, 600],
  strut_end_allowance: [-200, 400],
  strut_supply_length: [50, 1200],
  plate_thickness: [0, 60],
  foot_pad: [0, 500],
  shim_thickness: [0, 60],
  upper_bracket_height: [-1500, 2500],
  lower_bracket_height: [-1500, 2500],
  port_foot_y: [-2000, 2000],
  starboard_foot_y: [-2000, 2000],
  single_foot_y: [-2000, 2000],
  port_foot_height: [-1500, 2500],
  starboard_foot_height: [-1500, 2500],
  single_foot_height: [-1500, 2500],
  shaft_offset: [-2000, 2000],
  shaft_lean: [-15, 15],
  shaft_side_lean: [-15, 15],
  shaft_foot_height: [-1500, 1500],
};

function arbitraryOf(cell: InputCell): fc.Arbitrary<number | boolean | string> {
  const base = caseInputs[cell.name] ?? cell.value;
  if (cell.type === 'flag') return fc.boolean();
  if (cell.type === 'word') return fc.constantFrom(...(cell.words ?? []));
  if (cell.only !== undefined) return fc.constantFrom(...cell.only);
  const [low, high] = cell.usual ?? [cell.min ?? 0, cell.max ?? 1];
  if (cell.type === 'whole') return fc.integer({ min: low, max: high });
  const usual = within(low, high);
  const silly = SILLY[cell.name];
  const plain = { weight: 5, arbitrary: fc.constant(base) };
  return silly === undefined
    ? fc.oneof(plain, { weight: 9, arbitrary: usual })
    : fc.oneof(plain, { weight: 7, arbitrary: usual }, { weight: 2, arbitrary: within(...silly) });
}

/** Moves what clashes until the inputs can be together; what is merely silly stays. */
function together(drawn: Inputs): Inputs {
  const n = (name: string): number => drawn[name] as number;
  const wall = (od: string, thickness: string): number => Math.min(n(thickness), n(od) * 0.4);
  const tubeWall = wall('tube_od', 'tube_wall');
  const inUse = [
    'shaft_offset',
    ...(n('strut_count') === 2 ? ['port_foot_y', 'starboard_foot_y'] : ['single_foot_y']),
  ];
  const widest = Math.max(...inUse.map((name) => Math.abs(n(name))));
  const radius = n('transom_camber_radius');
  const rising = (low: string, high: string, least: number) => ({
    [low]: Math.min(n(low), n(high)),
    [high]: Math.max(n(low), n(high)) + least,
  });
  return {
    ...drawn,
    tube_wall: tubeWall,
    stock_diameter: Math.min(n('stock_diameter'), n('tube_od') - 2 * tubeWall),
    strut_wall: wall('strut_od', 'strut_wall'),
    single_strut_wall: wall('single_strut_od', 'single_strut_wall'),
    transom_camber_radius: radius === 0 || radius > widest ? radius : widest * 1.2 + 1,
    vane_rudder_balance: Math.min(n('vane_rudder_balance'), n('vane_rudder_chord')),
    ...rising('transom_bottom', 'transom_top', 1),
    ...rising('main_rudder_foot', 'main_rudder_head', 1),
    ...rising('bearing_gap_min', 'bearing_gap_max', 0),
    ...rising('spread_min', 'spread_max', 0),
  };
}

/** Every input of the workbook at once, mostly sensible, sometimes silly, never refused. */
export const randomInputs: fc.Arbitrary<Inputs> = fc
  .record(Object.fromEntries(inputs.map((cell) => [cell.name, arbitraryOf(cell)])))
  .map(together);
