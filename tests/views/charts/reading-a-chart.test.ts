import { describe, expect, it } from 'vitest';
import type { LimitSample } from '../../../src/studies/evaluator.ts';
import type { SweepPoint } from '../../../src/studies/sweep.ts';
import type { Words } from '../../../src/studies/words.ts';
import { laidOver } from '../../../src/views/charts/other-lines.ts';
import { plotOf } from '../../../src/views/charts/plot-box.ts';
import { readAt } from '../../../src/views/charts/read-at.ts';
import { readWords } from '../../../src/views/charts/read-words.ts';
import { filterLabels } from '../../../src/views/parts/filter-labels.ts';
import { plainLimit } from '../../studies/plain-words.ts';

const gap = (state: LimitSample['state']): LimitSample => ({
  name: 'gap',
  state,
  room: null,
  ratio: null,
  value: null,
  low: null,
  high: null,
});

const points: readonly SweepPoint[] = [
  { x: 0, values: [10], limits: [gap('outside')] },
  { x: 2, values: [20], limits: [gap('near')] },
  { x: 4, values: [null], limits: [gap('no answer')] },
  { x: 6, values: [null], limits: [gap('no answer')], refused: 'It must be less.' },
];

const words: Words = {
  cell: (name) => ({ short: name, figure: (value) => `${value} mm`, bare: String }),
  limit: (name) => plainLimit(name, String),
};

describe('readAt', () => {
  it('reads what was worked out, or off the line between', () => {
    expect(readAt(points, 0, 2)).toEqual({ value: 20, about: false, refused: undefined });
    expect(readAt(points, 0, 1)).toEqual({ value: 15, about: true, refused: undefined });
    expect(readAt(points, 0, 0)).toMatchObject({ value: 10, about: false });
  });

  it('reads nothing where the line is broken', () => {
    expect(readAt(points, 0, 3)).toMatchObject({ value: null });
    expect(readAt(points, 0, 6)).toMatchObject({ value: null, refused: 'It must be less.' });
  });
});

describe('readWords', () => {
  const reading = { points, index: 0, input: 'height', result: 'gap', limits: new Set(['gap']) };

  it.each<[number, string]>([
    [0, '0 mm: gap 10 mm, outside.'],
    [2, '2 mm: gap 20 mm, near.'],
    [1, '1 mm: gap about 15 mm.'],
    [4, '4 mm: no answer.'],
    [6, '6 mm: It must be less.'],
  ])('at %s', (at, text) => {
    expect(readWords(reading, at, words)).toBe(text);
  });
});

describe('laidOver', () => {
  const line = (...values: number[]): SweepPoint[] =>
    values.map((it, i) => ({ x: i, values: [it], limits: [] }));

  it('draws lines that run the same once, and says how many there are', () => {
    const over = laidOver(line(1, 2), 0, 'Mine', [
      { name: 'Same', points: line(1, 2) },
      { name: 'Other', points: line(3, 4) },
      { name: 'Like the other', points: line(3, 4) },
    ]);
    expect(over).toEqual({ own: 'Mine, 1 more', lines: [{ name: 'Other, 1 more', values: [3, 4] }] });
  });

  it('names nothing when the chart stands alone', () => {
    expect(laidOver(line(1, 2), 0, undefined, [])).toEqual({ own: undefined, lines: [] });
  });
});

describe('plotOf', () => {
  const plot = plotOf(500, 200, [0, 10], [0, 100]);

  it('puts values where they stand, and finds them again', () => {
    expect(plot.x(0)).toBe(plot.left);
    expect(plot.x(10)).toBe(plot.right);
    expect(plot.y(0)).toBe(plot.bottom);
    expect(plot.y(100)).toBe(plot.top);
    expect(plot.valueAt(plot.x(3.7))).toBeCloseTo(3.7, 12);
  });

  it('finds no value outside the range', () => {
    expect(plot.valueAt(0)).toBe(0);
    expect(plot.valueAt(500)).toBe(10);
  });
});

describe('filterLabels', () => {
  const all = [
    { name: 'shim_count', label: 'Shims under the lower bracket' },
    { name: 'lower_bracket_height', label: 'Height of the lower bracket' },
    { name: 'rudder_overhang', label: 'The boat’s own rudder: overhang at its head' },
  ];

  it.each<[string, string[]]>([
    ['', ['shim_count', 'lower_bracket_height', 'rudder_overhang']],
    ['lower', ['shim_count', 'lower_bracket_height']],
    ['bracket HEIGHT', ['lower_bracket_height']],
    ["boat's", ['rudder_overhang']],
    ['shim_c', ['shim_count']],
    ['keel', []],
  ])('by “%s”', (typed, names) => {
    expect(filterLabels(all, typed).map((it) => it.name)).toEqual(names);
  });
});
