import { expect, it } from 'vitest';
import type { Raster } from '../../../src/studies/map/raster.ts';
import { figureOn } from '../../../src/views/map/line-figures.ts';
import { meet, regionLetters } from '../../../src/views/map/region-letters.ts';

/** Ground 1 in the left 120 px, 2 in a strip 10 px wide beside it, the rest allowed. */
function raster(): Raster {
  const [width, height] = [300, 120];
  const ground = new Uint8Array(width * height);
  for (let i = 0; i < ground.length; i++) ground[i] = i % width < 120 ? 1 : i % width < 130 ? 2 : 0;
  return { width, height, ground };
}

const size = () => ({ width: 60, height: 14 });

it('letters a region in its middle, and none that its name does not fit into', () => {
  const letters = regionLetters(raster(), 1, size, []);
  expect(letters.map((it) => it.ground)).toEqual([1]);
  expect(Math.abs((letters[0]?.x ?? 0) - 60)).toBeLessThanOrEqual(6);
  expect((letters[0]?.x ?? 0) + 30).toBeLessThanOrEqual(120);
});

it('keeps clear of what is already there', () => {
  const mark = { x: 60, y: 60, width: 20, height: 20 };
  const [letter] = regionLetters(raster(), 1, size, [mark]);
  expect(letter).toBeDefined();
  expect(letter !== undefined && meet(letter, mark)).toBe(false);
});

it('sets a figure into the middle of a line, along it and upright', () => {
  const line = [
    { x: 100, y: 0 },
    { x: 0, y: 100 },
  ];
  const figure = figureOn(line, '50', { width: 14, height: 12 }, () => true, []);
  expect(figure).toMatchObject({ x: 50, y: 50 });
  expect(figure?.angle).toBeCloseTo(-Math.PI / 4, 9);
});

it('leaves a line without a figure where it is too short or too bent', () => {
  const short = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
  ];
  const bent = Array.from({ length: 20 }, (_, i) => ({ x: (i % 2) * 12, y: i * 6 }));
  for (const line of [short, bent]) {
    expect(figureOn(line, '50', { width: 14, height: 12 }, () => true, [])).toBeUndefined();
  }
});
