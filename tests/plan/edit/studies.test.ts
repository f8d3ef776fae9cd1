import { expect, it } from 'vitest';
import { setStudy } from '../../../src/plan/edit.ts';
import { documentOf } from '../../../src/plan/file/document-of.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { planFrom } from './edits.ts';

const base = newPlan('Boat');
const MAP = { across: 'shim_count', up: 'upper_bracket_height', lines: ['rudder_gap'] };

it('keeps one row of settings for each study', () => {
  const once = planFrom(setStudy(base, 'map', MAP));
  const twice = planFrom(setStudy(once, 'sweep', { input: 'shim_count' }));
  const again = planFrom(setStudy(twice, 'map', { ...MAP, across: 'shaft_offset' }));
  expect(again.studies).toEqual([
    { study: 'map', settings: { ...MAP, across: 'shaft_offset' } },
    { study: 'sweep', settings: { input: 'shim_count' } },
  ]);
  expect(planFrom(setStudy(again, 'map', {})).studies.map((it) => it.study)).toEqual(['sweep']);
});

it('gives the same plan when nothing changes', () => {
  const once = planFrom(setStudy(base, 'map', MAP));
  const { across, up, lines } = MAP;
  expect(planFrom(setStudy(once, 'map', { lines: [...lines], up, across }))).toBe(once);
  expect(planFrom(setStudy(base, 'map', {}))).toBe(base);
});

it('stands in the plan file', () => {
  const { studies } = documentOf(planFrom(setStudy(base, 'map', MAP)));
  expect(studies).toEqual([
    { study: 'map', settings: Object.entries(MAP).map(([name, value]) => ({ name, value })) },
  ]);
});
