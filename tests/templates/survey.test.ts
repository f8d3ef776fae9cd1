import { describe, expect, it } from 'vitest';
import { inputs, limitCells, resultNamed, results } from '../../src/plan/book.ts';
import { limitsSchema, pageSchema, tablesSchema } from '../../src/plan/template.ts';
import limits from '../../templates/limits.json';
import survey from '../../templates/survey.json';
import tables from '../../templates/tables.json';

const cells: readonly { name: string; label: string; short: string; help: string }[] =
  survey.sections.flatMap(
    (section) => section.cells as { name: string; label: string; short: string; help: string }[],
  );
const mine = new Set(cells.map((cell) => cell.name));
const readings = inputs.filter((cell) => mine.has(cell.name));

describe('the survey’s page and tables', () => {
  it('are what their schemas say', () => {
    expect(pageSchema.safeParse(survey).error).toBeUndefined();
    expect(tablesSchema.safeParse(tables).error).toBeUndefined();
    expect(limitsSchema.safeParse(limits).error).toBeUndefined();
  });

  it('have labels that fit a line and short names that fit the board', () => {
    for (const { label, short, help } of cells) {
      expect(label.length, label).toBeLessThanOrEqual(60);
      expect(short.length, short).toBeLessThanOrEqual(24);
      expect(help, label).toMatch(/[.;]$/);
    }
  });

  it('say for every input which table gives it a meaning', () => {
    const known = tables.tables.map((table) => table.name);
    for (const { name, with_table } of readings) {
      expect(with_table, name).toBeDefined();
      expect(known).toEqual(expect.arrayContaining(with_table ?? []));
    }
  });

  it('step onto the value and the ends of the usual range, inside the bounds', () => {
    for (const { name, type, value, usual, step, min, max, above } of readings) {
      if (type !== 'number') continue;
      const [low, high] = usual ?? [Number.NaN, Number.NaN];
      const off = (to: number) => Math.abs((to - low) / (step ?? 0) - Math.round((to - low) / (step ?? 0)));
      expect(off(Number(value)), name).toBeLessThan(1e-6);
      expect(off(high), name).toBeLessThan(1e-6);
      expect(low, name).toBeLessThanOrEqual(Number(value));
      expect(high, name).toBeGreaterThanOrEqual(Number(value));
      expect(min ?? above, name).toBeLessThanOrEqual(low);
      expect(max, name).toBeGreaterThanOrEqual(high);
    }
  });

  it('put their limits last, each on a name of the survey', () => {
    const own = limitCells.filter((limit) => mine.has(limit.result));
    expect(own).toHaveLength(19);
    expect(limitCells.slice(-19)).toEqual(own);
    // The last is the lean to the side, which always applies.
    expect(own.at(-1)).toMatchObject({ name: 'shaft_side_lean' });
    expect(own.at(-1)?.applies).toBeUndefined();
    for (const { applies } of own.slice(0, -1)) {
      expect(resultNamed(String(applies))?.flag).toBe(true);
    }
    expect(results.length).toBeGreaterThan(own.length);
  });
});
