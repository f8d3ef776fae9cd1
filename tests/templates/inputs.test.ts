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
  });
});
