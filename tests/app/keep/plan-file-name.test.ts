import fc from 'fast-check';
import { expect, it } from 'vitest';
import { planFileName } from '../../../src/app/keep/plan-file-name.ts';

it.each([
  ['Reverse transom', 'reverse-transom.plan.json'],
  ['  Sloop: 3 shims / 800 mm ', 'sloop-3-shims-800-mm.plan.json'],
  ['Éa 漢字', 'éa-漢字.plan.json'],
  ['../../etc/passwd', 'etc-passwd.plan.json'],
  ['<>:"/\\|?*', 'plan.plan.json'],
  ['', 'plan.plan.json'],
  ['CON', 'plan-con.plan.json'],
  ['x'.repeat(64), `${'x'.repeat(60)}.plan.json`],
])('%j becomes %s', (title, name) => {
  expect(planFileName(title)).toBe(name);
});

it('gives a name that any system takes, whatever the title', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 64 }), (title) => {
      expect(planFileName(title)).toMatch(/^[\p{L}\p{N}\p{M}]+(?:-[\p{L}\p{N}\p{M}]+)*\.plan\.json$/u);
    }),
    { numRuns: 1000 },
  );
});
