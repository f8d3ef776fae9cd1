import { expect, it } from 'vitest';
import type { LimitTurns } from '../../../src/studies/turning.ts';
import { standingAt, stretches } from '../../../src/views/turning/strip-parts.ts';

const limit: LimitTurns = {
  limit: 'gap',
  first: 'outside',
  turns: [
    { below: 3, above: 4, at: 4, from: 'outside', to: 'holds' },
    { below: 8, above: 9, at: 9, from: 'holds', to: 'no answer' },
  ],
  closest: null,
  surely: null,
  moved: true,
  complete: true,
};

it('stretches go from end to end and turn between two steps', () => {
  const all = stretches(limit, 0, 10);
  expect(all).toEqual([
    { from: 0, to: 3.5, standing: 'outside' },
    { from: 3.5, to: 8.5, standing: 'holds' },
    { from: 8.5, to: 10, standing: 'no answer' },
  ]);
  expect([0, 3, 4, 8, 9, 10].map((it) => standingAt(all, it))).toEqual([
    'outside',
    'outside',
    'holds',
    'holds',
    'no answer',
    'no answer',
  ]);
});
