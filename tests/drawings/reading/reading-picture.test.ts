import { describe, expect, it } from 'vitest';
import { layout } from '../../../src/drawings/layout/layout.ts';
import { pictured, readingPicture } from '../../../src/drawings/reading/reading-picture.ts';
import { pages } from '../../../src/plan/book.ts';
import { caseValues, valuesFrom } from '../case.ts';

const page = { width: 320, height: 200 };
const texts = (name: string, values = caseValues()): string[] => {
  const scene = readingPicture(name, values, { unit: 'mm' });
  if (scene === null) throw new Error(`no picture for ${name}`);
  return layout(scene, page).primitives.flatMap((it) => (it.kind === 'text' ? [it.text] : []));
};

describe('pictures of readings', () => {
  it.each(pictured)('shows %s with one figure, and with a question mark before it is read', (name) => {
    expect(texts(name, valuesFrom({}))).toEqual(['?']);
    const scene = readingPicture(name, caseValues(), { unit: 'mm' });
    const set = scene && layout(scene, page);
    expect(set?.dropped).toEqual([]);
    expect(set?.labels).toHaveLength(1);
  });

  it('letters the value it is given', () => {
    expect(texts('vane_rudder_chord')).toEqual(['230 mm']);
    expect(texts('transom_rake')).toEqual(['−10.0°']);
    expect(texts('tube_wall')).toEqual(['3.9 mm']);
  });

  it('draws the measured length to the scale of the picture', () => {
    for (const [name, answer] of [
      ['transom_top', 900],
      ['rudder_stock_ahead', 450],
      ['lower_reach', 160],
      ['foot_standoff', 40],
      ['strut_od', 33.4],
      ['transom_thickness', 18],
      ['vane_rudder_drop', 150],
    ] as const) {
      const scene = readingPicture(name, caseValues(), { unit: 'mm' });
      const found = scene?.shapes.find((it) => it.kind === 'dimension');
      if (found?.kind !== 'dimension') throw new Error(`nothing measured for ${name}`);
      expect(Math.hypot(found.to.x - found.from.x, found.to.y - found.from.y), name).toBeCloseTo(answer, 6);
    }
  });

  it('keeps what is measured inside the picture', () => {
    for (const name of pictured) {
      const scene = readingPicture(name, caseValues(), { unit: 'both' });
      const found = scene?.shapes.find((it) => it.kind === 'dimension');
      if (scene === null || found?.kind !== 'dimension') continue;
      for (const p of [found.from, found.to]) {
        expect(p.x, name).toBeGreaterThan(scene.box.x0);
        expect(p.x, name).toBeLessThan(scene.box.x1);
        expect(p.y, name).toBeGreaterThan(scene.box.y0);
        expect(p.y, name).toBeLessThan(scene.box.y1);
      }
    }
  });

  it('has none for what is not measured on boat or gear', () => {
    for (const name of ['boat_speed', 'water_density', 'tube_yield', 'load_safety', 'gear_mass', 'lanyard']) {
      expect(readingPicture(name, caseValues(), { unit: 'mm' })).toBeNull();
    }
  });

  it('covers every length, area and angle that is read on boat or gear', () => {
    const cells = pages
      .filter(({ page }) => page === 'Boat' || page === 'Gear')
      .flatMap(({ sections }) => sections.flatMap((it) => it.cells));
    const read = cells.filter(
      (it) =>
        it.kind === 'input' &&
        (it.where === 'reading' || it.where === 'manual') &&
        ['mm', 'mm²', 'deg'].includes(it.unit),
    );
    expect(read.map((it) => it.name).filter((name) => !pictured.includes(name))).toEqual([]);
  });
});
