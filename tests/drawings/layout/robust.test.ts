import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layout } from '../../../src/drawings/layout/layout.ts';
import { planView } from '../../../src/drawings/plan/plan-view.ts';
import type { Scene } from '../../../src/drawings/scene.ts';
import { sideView } from '../../../src/drawings/side/side-view.ts';
import { sternView } from '../../../src/drawings/stern/stern-view.ts';
import { primitivesToSvg } from '../../../src/drawings/svg/scene-to-svg.ts';
import { caseValues, inputs, judge, screenPalette, valuesFrom, withResults } from '../case.ts';

const views = [sideView, sternView, planView];

/** What the views look at in the case, with two struts and with one. */
const looked = new Set(
  [{}, { strut_count: 1 }].flatMap((changes) => {
    const record = withResults(changes);
    const seen: string[] = [];
    const watched = new Proxy(record, {
      get: (from, name) => {
        seen.push(String(name));
        return from[String(name)];
      },
    });
    for (const view of views) view(valuesFrom(watched), { unit: 'both', limits: judge(valuesFrom(record)) });
    return seen;
  }),
);
const names = Object.keys(inputs).filter((name) => looked.has(name));
const results = [...looked].filter((name) => !(name in inputs));

const anything = fc.oneof(
  { weight: 3, arbitrary: fc.constant(null) },
  { weight: 3, arbitrary: fc.integer({ min: -2000, max: 2000 }) },
  { weight: 1, arbitrary: fc.double() },
  { weight: 1, arbitrary: fc.boolean() },
);
const record = fc.dictionary(fc.constantFrom(...names, ...results), anything);
const page = fc.record({
  width: fc.integer({ min: 60, max: 900 }),
  height: fc.integer({ min: 60, max: 1200 }),
});

function check(scene: Scene, sheet: { width: number; height: number }): void {
  const set = layout(scene, sheet);
  const svg = primitivesToSvg(set, screenPalette);
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  for (const [i, a] of set.labels.entries()) {
    for (const b of set.labels.slice(i + 1)) {
      const over =
        Math.min(a.rect.x + a.rect.width, b.rect.x + b.rect.width) - Math.max(a.rect.x, b.rect.x) > 1e-6 &&
        Math.min(a.rect.y + a.rect.height, b.rect.y + b.rect.height) - Math.max(a.rect.y, b.rect.y) > 1e-6;
      if (over) throw new Error(`${a.name} is lettered over ${b.name}`);
    }
  }
}

describe('whatever is empty or odd', () => {
  it('draws views with nothing known at all', () => {
    const nothing = valuesFrom({});
    for (const view of views)
      check(view(nothing, { unit: 'both', limits: judge(nothing) }), { width: 432, height: 836 });
  });

  it('draws the case with any input or result missing', () => {
    for (const name of [...names, ...results]) {
      const values = valuesFrom({ ...withResults(), [name]: null });
      const options = { unit: 'both', limits: judge(values), lastGood: caseValues() } as const;
      for (const view of views) check(view(values, options), { width: 320, height: 700 });
    }
  });

  it('draws the case with anything in the place of some values, on any page, in any unit, with any scenario behind', () => {
    fc.assert(
      fc.property(
        record,
        record,
        page,
        fc.constantFrom('mm', 'in', 'both'),
        fc.option(fc.constantFrom(...names), { nil: undefined }),
        (changed, other, sheet, unit, part) => {
          const values = valuesFrom({ ...withResults(), ...changed });
          const ghost = valuesFrom({ ...withResults(), ...other });
          const options = { unit, limits: judge(values), ghost, lastGood: caseValues() } as const;
          for (const view of views) {
            check(view(values, part === undefined ? options : { ...options, part, lit: part }), sheet);
          }
        },
      ),
      { numRuns: 120 },
    );
  });

  it('draws mounts within their bounds, moved about at will', () => {
    const mount = fc.record({
      transom_rake: fc.integer({ min: -45, max: 45 }),
      transom_camber_radius: fc.constantFrom(0, 900, 3000),
      shaft_lean: fc.integer({ min: -15, max: 15 }),
      shim_count: fc.integer({ min: 0, max: 40 }),
      strut_count: fc.constantFrom(1, 2),
      lower_flange_hinged: fc.boolean(),
      upper_bracket_height: fc.integer({ min: 300, max: 1000 }),
      port_foot_height: fc.integer({ min: 300, max: 900 }),
      shaft_offset: fc.integer({ min: -300, max: 300 }),
      drive_forward: fc.integer({ min: 20, max: 300 }),
    });
    fc.assert(
      fc.property(mount, page, (changed, sheet) => {
        const values = caseValues(changed);
        for (const view of views) check(view(values, { unit: 'both', limits: judge(values) }), sheet);
      }),
      { numRuns: 120 },
    );
  });
});
