import { describe, expect, it } from 'vitest';
import boat from '../../templates/boat.json';
import gear from '../../templates/gear.json';
import mount from '../../templates/mount.json';

interface Cell {
  readonly kind: string;
  readonly name: string;
  readonly label: string;
  readonly short: string;
  readonly help: string;
  readonly type: string;
  readonly words?: readonly string[];
  readonly unit: string;
  readonly value: number | boolean | string;
  readonly off_by: number;
  readonly min?: number;
  readonly above?: number;
  readonly max?: number;
  readonly only?: readonly number[];
  readonly usual?: readonly number[];
  readonly step?: number;
  readonly step_in?: number;
  readonly where: string;
  readonly tool: string;
  readonly first?: boolean;
  readonly picture?: string;
  readonly source?: string;
}

interface Page {
  readonly page: string;
  readonly sections: readonly {
    readonly title: string;
    readonly lead: string;
    readonly cells: readonly Cell[];
  }[];
}

/** Every input of the model's three tables: name, unit, base value of the case to start from. */
const model: Record<string, readonly (readonly [string, string, number | boolean | string])[]> = {
  Boat: [
    ['transom_rake', 'deg', -10],
    ['transom_camber_radius', 'mm', 0],
    ['transom_top', 'mm', 900],
    ['transom_bottom', 'mm', 40],
    ['transom_half_breadth', 'mm', 600],
    ['transom_half_breadth_low', 'mm', 400],
    ['transom_thickness', 'mm', 18],
    ['transom_build', '–', 'solid'],
    ['inner_skin', 'mm', 3],
    ['core_removed', '–', false],
    ['rudder_overhang', 'mm', 35],
    ['rudder_overhang_foot', 'mm', 58],
    ['main_rudder_head', 'mm', -100],
    ['main_rudder_foot', 'mm', -1200],
    ['rudder_stock_ahead', 'mm', 450],
    ['main_rudder_swing', 'deg', 35],
    ['boat_speed', 'kn', 8.75],
    ['dynamic_factor', '–', 1],
    ['water_density', 'kg/m³', 1025],
    ['heel_angle', 'deg', 20],
  ],
  Gear: [
    ['shaft_length', 'mm', 1000],
    ['tube_od', 'mm', 60.3],
    ['tube_wall', 'mm', 3.9],
    ['tube_yield', 'MPa', 205],
    ['stock_diameter', 'mm', 40],
    ['stock_yield', 'MPa', 450],
    ['stock_fatigue', 'MPa', 100],
    ['bearing_gap_min', 'mm', 50],
    ['bearing_gap_max', 'mm', 250],
    ['spacing_min', 'mm', 300],
    ['drive_overlap', 'mm', 150],
    ['drive_forward', 'mm', 70],
    ['drive_gap_min', 'mm', 12],
    ['face_gap_min', 'mm', 25],
    ['lower_clamp_depth', 'mm', 80],
    ['upper_clamp_depth', 'mm', 80],
    ['lower_reach', 'mm', 160],
    ['lower_flange_height', 'mm', 140],
    ['lower_flange_width', 'mm', 200],
    ['lower_flange_hinged', '–', true],
    ['lower_bolt_spacing', 'mm', 140],
    ['shim_stack_max', 'mm', 75],
    ['shim_sleeve', '–', false],
    ['pin_forward', 'mm', 45],
    ['pin_half_width', 'mm', 40],
    ['foot_standoff', 'mm', 40],
    ['foot_width', 'mm', 60],
    ['foot_height', 'mm', 120],
    ['foot_bolt_count', '–', 2],
    ['foot_bolt_spacing', 'mm', 80],
    ['strut_end_allowance', 'mm', 25],
    ['strut_od', 'mm', 33.4],
    ['strut_wall', 'mm', 3.4],
    ['single_strut_od', 'mm', 60.3],
    ['single_strut_wall', 'mm', 3.9],
    ['strut_yield', 'MPa', 205],
    ['strut_modulus', 'MPa', 193000],
    ['strut_supply_length', 'mm', 800],
    ['strut_supply_count', '–', 2],
    ['single_strut_max', 'mm', 450],
    ['saw_kerf', 'mm', 2],
    ['spread_min', 'deg', 45],
    ['spread_max', 'deg', 90],
    ['strut_rise_max', 'deg', 30],
    ['flange_yaw_max', 'deg', 2],
    ['bolt_diameter', 'mm', 12],
    ['bolt_strength', 'MPa', 700],
    ['bolt_safety', '–', 3],
    ['plate_area', 'mm²', 15000],
    ['plate_thickness', 'mm', 8],
    ['plate_yield', 'MPa', 205],
    ['laminate_strength', 'MPa', 10],
    ['laminate_shear', 'MPa', 4.3],
    ['flange_thickness', 'mm', 10],
    ['foot_pad', 'mm', 0],
    ['bed_thickness', 'mm', 3],
    ['vane_rudder_chord', 'mm', 230],
    ['vane_rudder_balance', 'mm', 55],
    ['vane_rudder_span', 'mm', 900],
    ['vane_rudder_drop', 'mm', 150],
    ['vane_rudder_swing', 'deg', 45],
    ['lift_coefficient', '–', 1.3],
    ['steering_lift', '–', 0.35],
    ['drag_ratio', '–', 0.35],
    ['load_safety', '–', 1.25],
    ['gear_mass', 'kg', 30],
    ['stop_collar', '–', true],
    ['lanyard', '–', true],
    ['gear_torque', 'N·m', 0],
    ['bolt_tightening_stress', 'MPa', 200],
    ['torque_factor_low', '–', 0.12],
    ['torque_factor_high', '–', 0.3],
    ['pad_gap_sealed', 'mm', 1],
    ['sealant_bead', 'mm', 6],
    ['bed_waste', '–', 0.3],
    ['strut_trial_extra', 'mm', 20],
  ],
  Mount: [
    ['shim_count', '–', 4],
    ['shim_thickness', 'mm', 12],
    ['wedge_edge', 'mm', 3],
    ['shaft_offset', 'mm', 0],
    ['shaft_foot_height', 'mm', 100],
    ['shaft_lean', 'deg', 0],
    ['lower_bracket_height', 'mm', 250],
    ['upper_bracket_height', 'mm', 800],
    ['strut_count', '–', 2],
    ['port_foot_y', 'mm', -170],
    ['port_foot_height', 'mm', 790],
    ['starboard_foot_y', 'mm', 170],
    ['starboard_foot_height', 'mm', 790],
    ['single_foot_y', 'mm', 0],
    ['single_foot_height', 'mm', 790],
    ['rudder_gap_min', 'mm', 50],
    ['immersion_min', '–', 0.95],
    ['lean_max', 'deg', 1],
    ['hole_freeboard_min', 'mm', 50],
  ],
};

const pages: readonly Page[] = [boat, gear, mount];
const cellsOf = (page: Page): readonly Cell[] => page.sections.flatMap((section) => section.cells);
const cells = pages.flatMap(cellsOf);
const numeric = cells.filter((cell) => cell.type === 'number' || cell.type === 'whole');

const cellNamed = (name: string): Cell => {
  const found = cells.find((cell) => cell.name === name);
  if (found === undefined) throw new Error(`There is no input ${name}.`);
  return found;
};

const accepts = (cell: Cell, value: number): boolean =>
  (cell.min === undefined || value >= cell.min) &&
  (cell.above === undefined || value > cell.above) &&
  (cell.max === undefined || value <= cell.max) &&
  (cell.only === undefined || cell.only.includes(value)) &&
  (cell.type !== 'whole' || Number.isInteger(value));

const wrong = (test: (cell: Cell) => boolean, of: readonly Cell[] = cells): string[] =>
  of.filter(test).map((cell) => cell.name);

describe('inputs of the prebuilt workbook', () => {
  it.each(pages)('$page has every name of its table once and no other', (page) => {
    const names = (model[page.page] ?? []).map(([name]) => name);
    expect(
      cellsOf(page)
        .map((cell) => cell.name)
        .sort(),
    ).toEqual([...names].sort());
  });

  it.each(Object.values(model).flat())('%s is in %s and starts at %s', (name, unit, value) => {
    expect({ unit: cellNamed(name).unit, value: cellNamed(name).value }).toEqual({ unit, value });
  });

  it('are choices on Mount and inputs elsewhere', () => {
    for (const page of pages) {
      const kind = page.page === 'Mount' ? 'choice' : 'input';
      expect(
        wrong(
          (cell) => cell.kind !== kind || (cell.where === 'choice') !== (kind === 'choice'),
          cellsOf(page),
        ),
      ).toEqual([]);
    }
  });

  it('stand in sections of 4 to 12, each with a title and a lead sentence', () => {
    for (const section of pages.flatMap((page) => page.sections)) {
      expect(section.title).not.toBe('');
      expect(section.lead).toMatch(/\.$/);
      expect(section.cells.length).toBeGreaterThanOrEqual(4);
      expect(section.cells.length).toBeLessThanOrEqual(12);
    }
  });
});

describe('bounds, usual range and step', () => {
  it('hold the value', () => {
    expect(wrong((cell) => !accepts(cell, Number(cell.value)), numeric)).toEqual([]);
    const flags = cells.filter((cell) => cell.type === 'flag');
    expect(wrong((cell) => typeof cell.value !== 'boolean', flags)).toEqual([]);
    const words = cells.filter((cell) => cell.type === 'word');
    expect(wrong((cell) => cell.words?.includes(String(cell.value)) !== true, words)).toEqual([]);
    expect(numeric.length + flags.length + words.length).toBe(cells.length);
  });

  it('have one low bound and a high one on every number', () => {
    expect(wrong((cell) => (cell.min === undefined) === (cell.above === undefined), numeric)).toEqual([]);
    expect(wrong((cell) => cell.max === undefined, numeric)).toEqual([]);
  });

  it('keep the usual range inside the bounds and round the value', () => {
    expect(
      wrong((cell) => {
        const [low, high] = cell.usual ?? [];
        if (low === undefined || high === undefined || cell.usual?.length !== 2) return true;
        const value = Number(cell.value);
        return !(low < high && low <= value && value <= high && accepts(cell, low) && accepts(cell, high));
      }, numeric),
    ).toEqual([]);
  });

  it('step onto the value and the ends of the usual range, in whole steps for whole numbers', () => {
    expect(
      wrong((cell) => {
        const [low = Number.NaN, high = Number.NaN] = cell.usual ?? [];
        const step = cell.step ?? Number.NaN;
        if (cell.type === 'whole' && !Number.isInteger(step)) return true;
        const off = (to: number) => Math.abs((to - low) / step - Math.round((to - low) / step));
        return !(step > 0 && off(Number(cell.value)) < 1e-6 && off(high) < 1e-6);
      }, numeric),
    ).toEqual([]);
  });

  it('have a step in inches on lengths and on nothing else', () => {
    expect(wrong((cell) => (cell.step_in !== undefined) !== (cell.unit === 'mm'))).toEqual([]);
    expect(wrong((cell) => cell.step_in !== undefined && !(cell.step_in > 0))).toEqual([]);
  });

  it.each([
    ['transom_rake', [-60, 60], [-60.1, 80]],
    ['shaft_lean', [-15, 15], [-15.1, 15.1]],
    ['upper_bracket_height', [-5000, 5000], [-5001, 5001]],
    ['shaft_offset', [-5000, 5000], [-5001, 5001]],
    ['boat_speed', [0, 30], [-0.1, 30.1]],
    ['shim_count', [0, 40], [-1, 0.5, 41]],
    ['shim_thickness', [0], [-1]],
    ['transom_thickness', [0.1], [0, -1]],
    ['strut_count', [1, 2], [0, 1.5, 3]],
    ['bolt_diameter', [6, 8, 10, 12], [5, 7, 14]],
    ['foot_bolt_count', [2, 4, 12], [0, 3, 14]],
    ['shaft_length', [1], [0, -1]],
    ['tube_wall', [0.1], [0]],
    ['strut_wall', [0.1], [0]],
    ['plate_area', [1], [0]],
    ['vane_rudder_span', [1], [0]],
    ['lower_bolt_spacing', [1], [0]],
    ['foot_bolt_spacing', [1], [0]],
    ['immersion_min', [0, 1], [-0.01, 1.01]],
    ['vane_rudder_swing', [0, 90], [-1, 91]],
  ])('%s takes %s and refuses %s', (name, takes, refuses) => {
    const cell = cellNamed(name);
    expect(takes.filter((value) => !accepts(cell, value))).toEqual([]);
    expect(refuses.filter((value) => accepts(cell, value))).toEqual([]);
  });
});

describe('words', () => {
  it('keep labels to 48 characters and short names to 22, all different', () => {
    expect(wrong((cell) => cell.label === '' || cell.label.length > 48)).toEqual([]);
    expect(wrong((cell) => cell.short === '' || cell.short.length > 22)).toEqual([]);
    expect(new Set(cells.map((cell) => cell.label)).size).toBe(cells.length);
    expect(new Set(cells.map((cell) => cell.short)).size).toBe(cells.length);
  });

  it('help in one to three whole sentences', () => {
    const sentences = (help: string) => help.match(/\.(?=\s|$)/g)?.length ?? 0;
    expect(wrong((cell) => !cell.help.endsWith('.'))).toEqual([]);
    expect(wrong((cell) => sentences(cell.help) < 1 || sentences(cell.help) > 3)).toEqual([]);
  });

  it('say in words when a value is negative, wherever a length or an angle may be', () => {
    const signed = numeric.filter((cell) => (cell.min ?? 0) < 0);
    expect(wrong((cell) => !/\bminus\b/i.test(cell.help), signed)).toEqual([]);
  });

  it('never promise and never use the names of the model', () => {
    const said = (cell: Cell) => [cell.label, cell.short, cell.help, cell.source ?? ''].join(' ');
    const barred = /\bsafe|vane rudder|main rudder|utilisation|_/i;
    expect(wrong((cell) => barred.test(said(cell)))).toEqual([]);
    const headings = pages.flatMap((page) => page.sections).flatMap(({ title, lead }) => [title, lead]);
    expect(headings.filter((heading) => barred.test(heading))).toEqual([]);
  });
});

describe('where a value comes from', () => {
  it('names a place and a tool', () => {
    const places = ['reading', 'manual', 'assumed', 'choice'];
    const tools = ['tape', 'level', 'waterline mark', 'caliper', 'manual', 'none'];
    expect(wrong((cell) => !places.includes(cell.where) || !tools.includes(cell.tool))).toEqual([]);
  });

  it('says so for everything that is not a reading or a choice of the owner', () => {
    expect(
      wrong((cell) => (cell.where === 'manual' || cell.where === 'assumed') && cell.source === undefined),
    ).toEqual([]);
    const kinds = /^(assumed|common practice, no source|stand-in, round figure of our own): \S/;
    expect(wrong((cell) => cell.source !== undefined && !kinds.test(cell.source))).toEqual([]);
  });

  it('is off by nothing for counts, flags and words, and never by more than the bounds leave', () => {
    expect(wrong((cell) => !(cell.off_by >= 0))).toEqual([]);
    expect(wrong((cell) => cell.type !== 'number' && cell.off_by !== 0)).toEqual([]);
    expect(
      wrong((cell) => {
        const value = Number(cell.value);
        return !(accepts(cell, value - cell.off_by) && accepts(cell, value + cell.off_by));
      }, numeric),
    ).toEqual([]);
  });
});

describe('what a newcomer takes first', () => {
  it('is exactly twelve readings of Boat and Gear, each with its picture', () => {
    const first = cells.filter((cell) => cell.first === true);
    expect(first).toHaveLength(12);
    expect(wrong((cell) => cell.kind !== 'input' || cell.picture !== cell.name, first)).toEqual([]);
    expect(wrong((cell) => cell.picture !== undefined && cell.first !== true)).toEqual([]);
  });
});
