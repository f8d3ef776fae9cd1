import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { arbitraryPlan } from '../arbitrary-plan.ts';

it('gives back any plan as it was, and the same text again', () => {
  fc.assert(
    fc.property(arbitraryPlan, (plan) => {
      const text = writePlan(plan);
      const opened = openPlan(text);
      expect(opened).toEqual({ ok: true, plan, notes: [] });
      if (opened.ok) {
        expect([...opened.plan.inputs.keys()]).toEqual([...plan.inputs.keys()]);
        expect(writePlan(opened.plan)).toBe(text);
      }
    }),
    { numRuns: 300 },
  );
});
