import { inputs } from '../book.ts';
import type { Plan, Reading, SurveyTable } from '../plan.ts';
import { KIND, type PlanDocument, type ReadingRow } from './document.ts';
import { CURRENT_VERSION } from './migrations.ts';
import { present } from './present.ts';

const APP = 'Sternmount';

/** Keys in the order they are written. */
const rowOf = (name: string, it: Reading): ReadingRow =>
  present({
    name,
    value: it.value,
    formula: it.formula,
    typed: it.typed,
    unit: it.unit,
    off_by: it.offBy,
    normal: it.normal,
    origin: it.origin,
    who: it.who,
    when: it.when,
    with: it.with,
    note: it.note,
  });

/** Rows in the order of the workbook, whatever order they were put in. */
const rowsOf = (readings: ReadonlyMap<string, Reading>): ReadingRow[] =>
  inputs.flatMap(({ name }) => {
    const reading = readings.get(name);
    return reading === undefined ? [] : [rowOf(name, reading)];
  });

const tableRowOf = ({ name, columns, rows, notes }: SurveyTable): PlanDocument['tables'][number] => ({
  name,
  columns: [...columns],
  rows: rows.map((row) => [...row]),
  ...(notes === undefined
    ? {}
    : {
        notes: notes.map(
          (it) =>
            it &&
            present({
              label: it.label,
              off_by: it.offBy,
              normal: it.normal,
              who: it.who,
              when: it.when,
              with: it.with,
              note: it.note,
            }),
        ),
      }),
});

/** A plan as the document that its file holds, keys in the order they are written. */
export const documentOf = (plan: Plan): PlanDocument => ({
  kind: KIND,
  version: CURRENT_VERSION,
  app: APP,
  title: plan.title,
  units: plan.units,
  notes: plan.notes,
  active: plan.active,
  locked: inputs.map((cell) => cell.name).filter((name) => plan.locked.has(name)),
  scenarios: plan.scenarios.map(({ name, note, overrides }) => ({
    name,
    ...(note === undefined ? {} : { note }),
    overrides: rowsOf(overrides),
  })),
  inputs: rowsOf(plan.inputs),
  own_cells: plan.ownCells.map(({ name, label, unit, value, formula, note }) =>
    present({ name, label, unit, value, formula, note }),
  ),
  limits: plan.limits.map(({ name, result, low, high, near, note }) =>
    present({ name, result, low, high, near, note }),
  ),
  tables: plan.tables.map(tableRowOf),
  studies: plan.studies.map(({ study, settings }) => ({
    study,
    settings: Object.entries(settings).map(([name, value]) => ({
      name,
      value: typeof value === 'object' ? [...value] : value,
    })),
  })),
  fit: {
    fitted: rowsOf(plan.fit.fitted),
    drilled: inputs.flatMap(({ name }) => {
      const it = plan.fit.drilled.get(name);
      return it === undefined ? [] : [present({ name, planned: it.planned, who: it.who, when: it.when })];
    }),
    steps: plan.fit.steps.map(({ step, done, value, who, when, note }) =>
      present({ step, done, value, who, when, note }),
    ),
    went_on: plan.fit.wentOn.map(({ step, because, despite, who, when }) =>
      present({
        step,
        because,
        despite: despite.map(({ stop, by, says }) => present({ stop, by, says })),
        who,
        when,
      }),
    ),
    unticked: plan.fit.unticked.map(({ step, tickedBy, tickedWhen, who, when }) =>
      present({ step, ticked_by: tickedBy, ticked_when: tickedWhen, who, when }),
    ),
    handover: [...plan.fit.handover].map(([name, text]) => ({ name, text })),
  },
});
