import { expect, it } from 'vitest';
import type { MapAxis } from '../../../src/studies/map/axis.ts';
import { map } from '../../../src/studies/map/map.ts';
import { finish } from '../../../src/studies/study.ts';
import { cellsOf, isCells } from '../../../src/views/map/cells.ts';
import { boxOf } from '../../../src/views/map/map-box.ts';
import { plainPoints } from '../../studies/plain-points.ts';

const side = (input: string, low: number, high: number, whole: boolean): MapAxis => ({
  input,
  low,
  high,
  present: low,
  whole,
  grain: 1,
});
const mapped = (whole: boolean) =>
  finish(
    map(plainPoints([{ name: 'sum', of: ({ a = 0, b = 0 }) => a + b, low: 2 }]), {
      scenario: null,
      x: side('a', 0, 3, true),
      y: side('b', 1, 2, whole),
      results: [],
      fineness: 3,
    }),
  );

it('two whole-number sides make one cell for each pair, edge to edge over the whole picture', () => {
  const found = mapped(true);
  const box = boxOf(found, 400, 300, 1);
  const cells = cellsOf(found, box);
  expect(cells).toHaveLength(8);
  const [first, second] = cells;
  expect(first?.left).toBe(box.left);
  expect((first?.top ?? 0) + (first?.height ?? 0)).toBe(box.bottom);
  expect(second?.left).toBeCloseTo((first?.left ?? 0) + (first?.width ?? 0), 9);
  const area = cells.reduce((sum, it) => sum + it.width * it.height, 0);
  expect(area).toBeCloseTo((box.right - box.left) * (box.bottom - box.top), 6);
  // The value 2 of the lower side stands in the middle of its cell.
  expect((cells[2]?.left ?? 0) + (cells[2]?.width ?? 0) / 2).toBeCloseTo(box.x(2), 9);
});

it('any other map has none', () => {
  const found = mapped(false);
  expect(isCells(found)).toBe(false);
  expect(cellsOf(found, boxOf(found, 400, 300, 1))).toEqual([]);
});
