import { inputs } from './book.ts';
import type { Origin, Plan, Reading } from './plan.ts';
import type { InputCell } from './template.ts';

const ORIGIN: Readonly<Record<InputCell['where'], Origin>> = {
  reading: 'stand-in',
  manual: 'stand-in',
  assumed: 'assumed',
  choice: 'choice',
};

/** What an input holds before anybody has read it. */
export const standIn = (cell: InputCell): Reading => ({
  value: cell.value,
  offBy: cell.off_by,
  origin: ORIGIN[cell.where],
});

/** A plan whose every value is the template's own. */
export const newPlan = (title: string): Plan => ({
  title,
  units: 'both',
  inputs: new Map(inputs.map((cell) => [cell.name, standIn(cell)])),
  limits: [],
  tables: [],
  ownCells: [],
  notes: '',
  scenarios: [],
  active: null,
  locked: new Set(),
  studies: [],
  fit: {
    fitted: new Map(),
    drilled: new Map(),
    steps: [],
    wentOn: [],
    unticked: [],
    handover: new Map(),
  },
});
