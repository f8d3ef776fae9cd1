import { describe, expect, it } from 'vitest';
import { holesOf } from '../../src/order/holes.ts';
import { underHoles } from '../../src/order/under-holes.ts';
import { inputs } from '../../src/plan/book.ts';
import type { CellName } from '../../src/plan/names.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

/** Places of all holes with some inputs changed, exact. */
const placesWith = (workbook: Workbook, over: ReadonlyMap<string, number>): string => {
  workbook.show(newPlan('Boat'), null, over);
  const ask = (name: CellName) => workbook.answer(name).value;
  return JSON.stringify(
    holesOf(ask, 'mm').holes.map(({ name, acrossFace, upFace }) => [name, acrossFace.exact, upFace.exact]),
  );
};

describe('what is under the holes', () => {
  // A curved and raked face, so that nothing that moves a hole is multiplied by nothing.
  const face = [
    ['transom_rake', -10],
    ['transom_camber_radius', 4000],
    ['shaft_offset', 12],
    ['foot_bolt_count', 4],
  ] as const;

  it.each([1, 2])('is every input that moves one of them, with %i strut(s)', (count) => {
    const workbook = new Workbook(newPlan('Boat'));
    const over = new Map<string, number>([...face, ['strut_count', count]]);
    const before = placesWith(workbook, over);
    const under: ReadonlySet<string> = new Set(underHoles((name) => workbook.answer(name).value));
    const moving = inputs.flatMap(({ name, type, value }) => {
      if (type !== 'number' || typeof value !== 'number') return [];
      const moved = placesWith(workbook, new Map(over).set(name, (over.get(name) ?? value) + 1));
      return moved === before ? [] : [name];
    });
    workbook.destroy();
    expect(moving.length).toBeGreaterThan(6);
    expect(moving.filter((name) => !under.has(name))).toEqual([]);
  });
});
