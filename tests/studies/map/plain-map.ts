import type { MapAsk } from '../../../src/studies/map/map.ts';
import { type PlainLimit, plainEvaluator } from '../plain-evaluator.ts';
import { evaluatorsOver } from '../points-over.ts';

/** Evaluators of limits on plain functions of two inputs. */
export const plainEvaluators = (limits: readonly PlainLimit[], inputs: Record<string, number> = {}) =>
  evaluatorsOver(() => plainEvaluator({ x: 0, y: 0, ...inputs }, limits));

const AXIS = { low: -2, high: 2, present: 0, whole: false, grain: 0.001 };

export const plainAsk = (ask: Partial<MapAsk> = {}): MapAsk => ({
  scenario: null,
  x: { ...AXIS, input: 'x' },
  y: { ...AXIS, input: 'y' },
  results: [],
  fineness: 41,
  ...ask,
});
