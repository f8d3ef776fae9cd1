import { expect, it } from 'vitest';
import { studyWords } from '../../../src/session/study-words.ts';
import type { Mapped } from '../../../src/studies/map/map.ts';
import { mapSentence, percent } from '../../../src/studies/map/map-words.ts';
import { plainAsk } from './plain-map.ts';

const words = studyWords({ units: 'mm', ownCells: [], limits: [] });

const mapped = (share: number, room: number): Mapped => {
  const { x, y } = plainAsk();
  return {
    ask: plainAsk({
      x: { ...x, input: 'shim_count', whole: true },
      y: { ...y, input: 'upper_bracket_height' },
    }),
    xs: new Float64Array(),
    ys: new Float64Array(),
    results: [],
    limits: [],
    least: new Float32Array(),
    refused: new Uint8Array(),
    share,
    widest: { x: 5, y: 812, room, limit: 'bolt_utilisation' },
    road: { by: 'replay' },
  };
};

it('says how much holds and where there is most room', () => {
  expect(mapSentence(mapped(0.234, 0.05), words)).toBe(
    'Everything holds in 23 % of this picture; the widest spot is 5 shims with the upper bracket at 812 mm, where the limit on lower bolts is the nearest.',
  );
});

it('says what comes nearest where nothing holds', () => {
  expect(mapSentence(mapped(0, -0.05), words)).toBe(
    'Nowhere in this picture does everything hold; the limit on lower bolts comes nearest to holding at 5 shims with the upper bracket at 812 mm.',
  );
});

it('rounds no share to nothing or to all', () => {
  expect([0, 0.001, 0.5, 0.999, 1].map(percent)).toEqual([
    '0 %',
    'less than 1 %',
    '50 %',
    'more than 99 %',
    '100 %',
  ]);
});
