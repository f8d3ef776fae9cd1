import { expect, it } from 'vitest';
import { setNotes, setTitle, setUnits } from '../../../src/plan/edit.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { planFrom, whyFrom } from './edits.ts';

const base = newPlan('Boat');

it('sets title, units and notes, and gives the same plan when nothing changes', () => {
  expect(planFrom(setTitle(base, '  Sloop ')).title).toBe('Sloop');
  expect(planFrom(setUnits(base, 'in')).units).toBe('in');
  expect(planFrom(setNotes(base, 'a\nb')).notes).toBe('a\nb');
  expect(planFrom(setTitle(base, 'Boat'))).toBe(base);
  expect(planFrom(setUnits(base, 'both'))).toBe(base);
  expect(planFrom(setNotes(base, ''))).toBe(base);
});

it('refuses what a file could not hold', () => {
  expect(whyFrom(setTitle(base, ' '))).toBe('The name of a plan is empty: write 1 to 64 characters.');
  expect(whyFrom(setTitle(base, 'x'.repeat(65)))).toContain('65 characters');
  expect(whyFrom(setNotes(base, 'x'.repeat(4097)))).toBe(
    'The text of the notes is 4097 characters long; at most 4096 are allowed.',
  );
  expect(whyFrom(setNotes(base, '\uD800'))).toContain('U+D800');
});
