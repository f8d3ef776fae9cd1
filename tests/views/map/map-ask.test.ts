import { expect, it } from 'vitest';
import { inputNamed } from '../../../src/plan/book.ts';
import type { InputCell } from '../../../src/plan/template.ts';
import { axisOf } from '../../../src/session/studies/map-axis.ts';
import { choiceOf } from '../../../src/views/map/map-ask.ts';

const plan = { ownCells: [{ name: 'own_gap', label: 'Own gap', unit: 'mm', value: 1 }] };
const names = (settings: Record<string, string>) => {
  const { x, y, result } = choiceOf(settings, 'bearing_gap', plan);
  return [x.name, y.name, result];
};

it('takes what the plan keeps, and what is usual where it keeps nothing that can be mapped', () => {
  expect(names({ across: 'shaft_lean', up: 'shim_count', lines: 'own_gap' })).toEqual([
    'shaft_lean',
    'shim_count',
    'own_gap',
  ]);
  expect(names({})).toEqual(['shim_count', 'upper_bracket_height', 'bearing_gap']);
  expect(names({ across: 'stop_collar', up: 'gone', lines: 'gone' })).toEqual([
    'shim_count',
    'upper_bracket_height',
    'bearing_gap',
  ]);
});

it('never takes one input for both sides', () => {
  expect(names({ across: 'upper_bracket_height' }).slice(0, 2)).toEqual([
    'upper_bracket_height',
    'shim_count',
  ]);
  expect(names({ across: 'shaft_lean', up: 'shaft_lean' }).slice(0, 2)).toEqual(['shaft_lean', 'shim_count']);
  expect(names({ up: 'shim_count' }).slice(0, 2)).toEqual(['shim_count', 'upper_bracket_height']);
});

it('sets each side to what is set in practice', () => {
  const cell = (name: string): InputCell => inputNamed(name) as InputCell;
  expect(axisOf(cell('upper_bracket_height'), 800)).toMatchObject({
    low: 400,
    high: 1200,
    grain: 1,
    whole: false,
  });
  expect(axisOf(cell('shaft_lean'), 0)).toMatchObject({ grain: 0.1 });
  expect(axisOf(cell('shim_count'), null)).toMatchObject({ grain: 1, whole: true, present: null });
});
