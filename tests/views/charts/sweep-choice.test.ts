import { expect, it } from 'vitest';
import { choiceOf } from '../../../src/views/charts/sweep-choice.ts';

const plan = { ownCells: [{ name: 'own_gap', label: 'Own gap', unit: 'mm', value: 1 }] };

it('takes what the plan keeps', () => {
  const settings = { input: 'shaft_lean', results: ['rudder_gap', 'own_gap'], scenarios: true };
  expect(choiceOf(settings, plan)).toEqual({
    input: 'shaft_lean',
    picked: ['rudder_gap', 'own_gap'],
    isCompared: true,
  });
});

it('passes over what cannot be swept, what is not there, and what is too much', () => {
  const many = ['rudder_gap', 'rudder_gap', 'gone', 'core_ready', 'standoff', 'shaft_x', 'arms_meet'];
  expect(choiceOf({ input: 'stop_collar', results: many, scenarios: 'yes' }, plan)).toEqual({
    input: 'shim_count',
    picked: ['rudder_gap', 'standoff', 'shaft_x'],
    isCompared: false,
  });
  expect(choiceOf({}, plan)).toEqual({ input: 'shim_count', picked: [], isCompared: false });
});
