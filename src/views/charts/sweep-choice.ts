import { inputs, results } from '../../plan/book.ts';
import type { Plan, StudySettings } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { ownVaried, variedCell } from '../../session/studies/varied-cell.ts';
import type { Labelled } from '../parts/filter-labels.ts';

/** Results drawn under one another. */
export const MOST_RESULTS = 3;

const isSweepable = ({ type, usual }: InputCell): boolean =>
  (type === 'number' || type === 'whole') && usual !== undefined;

/** What may be varied: inputs with a range, then the owner's own cells that hold a plain number. */
export const inputOptions = (plan: Pick<Plan, 'ownCells'>): readonly Labelled[] => [
  ...inputs.filter(isSweepable),
  ...ownVaried(plan),
];
export const resultOptions: readonly Labelled[] = results.filter((cell) => cell.flag !== true);

/** What the sweep is asked. */
export interface SweepChoice {
  readonly input: string;
  /** Results that were picked; none: the one that stands worst. */
  readonly picked: readonly string[];
  /** Whether the other scenarios are laid over it. */
  readonly isCompared: boolean;
}

/** The settings that a plan keeps; a file may name what cannot be swept, or what is no longer there. */
export function choiceOf(settings: StudySettings['settings'], plan: Pick<Plan, 'ownCells'>): SweepChoice {
  const { input, results: picked, scenarios } = settings;
  const cell = typeof input === 'string' ? variedCell(input, plan) : undefined;
  const known = new Set([...resultOptions, ...plan.ownCells].map((it) => it.name));
  return {
    input: cell?.name ?? 'shim_count',
    picked: Array.isArray(picked)
      ? [...new Set(picked as readonly string[])].filter((it) => known.has(it)).slice(0, MOST_RESULTS)
      : [],
    isCompared: scenarios === true,
  };
}
