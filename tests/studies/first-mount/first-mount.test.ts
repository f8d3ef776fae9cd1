import { describe, expect, it } from 'vitest';
import type { InputName } from '../../../src/plan/names.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { type Plan, readingOf, type Value } from '../../../src/plan/plan.ts';
import { MADE } from '../../../src/studies/first-mount/ask.ts';
import { randomBoat } from './random-boats.ts';
import { lookedAt, tried } from './tried.ts';

const BOATS = 50;

const withReadings = (plan: Plan, values: Readonly<Partial<Record<InputName, Value>>>): Plan => {
  const inputs = new Map(plan.inputs);
  for (const [name, value] of Object.entries(values)) {
    const reading = inputs.get(name);
    if (reading !== undefined) inputs.set(name, { ...reading, value });
  }
  return { ...plan, inputs };
};

describe('a first mount', () => {
  it(`keeps every limit on ${BOATS} boats drawn at random, or no mount on a 10 mm grid does`, () => {
    let held = 0;
    for (let number = 1; number <= BOATS; number++) {
      const boat = randomBoat(number);
      const { found, failing } = tried(boat);
      expect({ number, failing }).toEqual({ number, failing: found.mount.failing });
      if (failing.length === 0) {
        expect({ number, conflicts: found.conflicts }).toEqual({ number, conflicts: [] });
        held++;
        continue;
      }
      expect({ number, look: lookedAt(boat) }).toEqual({ number, look: undefined });
      // It says what stands in the way: at least one limit of each conflict fails with the mount it ends with.
      expect(found.conflicts.length).toBeGreaterThan(0);
      for (const { limits } of found.conflicts) expect(limits.some((it) => failing.includes(it))).toBe(true);
    }
    // Boats that no mount suits are told from a search that finds nothing: most of these have a mount.
    expect(held).toBeGreaterThan((BOATS * 2) / 3);
    expect(held).toBeLessThan(BOATS);
  }, 480_000);

  it('stands on the grid of the unit that the plan is in', () => {
    for (const [units, step] of [
      ['mm', 5],
      ['in', 6.35],
    ] as const) {
      const { plan, failing } = tried({ ...randomBoat(3), units });
      expect(failing).toEqual([]);
      for (const name of MADE.filter((it) => /height|_y$/.test(it))) {
        const steps = Number(readingOf(plan, name)?.value) / step;
        expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-9);
      }
    }
  });

  it('has feet that mirror each other, a shaft upright on the centreline, and a wedge only under a fixed flange', () => {
    for (const hinged of [true, false]) {
      const { plan, failing } = tried(
        withReadings(randomBoat(3), { lower_flange_hinged: hinged, transom_rake: 8 }),
      );
      const value = (name: InputName): Value | undefined => readingOf(plan, name)?.value;
      expect(failing).toEqual([]);
      expect(value('port_foot_y')).toBe(-(value('starboard_foot_y') as number));
      expect(value('port_foot_height')).toBe(value('starboard_foot_height'));
      expect([value('shaft_offset'), value('shaft_lean')]).toEqual([0, 0]);
      expect(Number(value('wedge_edge')) > 0).toBe(!hinged);
    }
  });

  // By hand: with no limit on strength in its way, a gap of 140 mm takes more than the 75 mm of shims allowed.
  it('says which limits conflict and what would free them', () => {
    const { found, failing } = tried(
      withReadings(newPlan('Gap'), { rudder_gap_min: 140, shim_sleeve: true, boat_speed: 6 }),
    );
    expect(failing).toContain('rudder_gap');
    const [conflict] = found.conflicts;
    expect(conflict?.how).toBe('together');
    expect(conflict?.limits).toContain('shim_stack');
    expect(conflict?.frees.map((it) => it.name)).toEqual(
      expect.arrayContaining(['rudder_gap_min', 'shim_stack_max']),
    );
    for (const { name, to } of conflict?.frees ?? []) {
      const freed = tried(
        withReadings(newPlan('Gap'), {
          ...{ rudder_gap_min: 140, shim_sleeve: true, boat_speed: 6 },
          [name]: to,
        }),
      );
      expect({ name, failing: freed.failing }).toEqual({ name, failing: [] });
    }
  });

  it('tells a limit that no choice of mount has a hold on from those that conflict', () => {
    const { found, failing } = tried(withReadings(randomBoat(3), { lanyard: false }));
    expect(failing).toEqual(['retained']);
    expect(found.conflicts).toEqual([
      { limits: ['retained'], how: 'no choice', isSmallest: true, frees: [] },
    ]);
  });

  it('is not worked out without a reading that it is placed by', () => {
    expect(() => tried(withReadings(newPlan('Empty'), { transom_top: null }))).toThrow(
      'No mount can be worked out: transom_top has no value.',
    );
  });
});
