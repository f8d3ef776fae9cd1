import { quoted } from '../../units/quoted.ts';
import { inputNamed, inputs } from '../book.ts';
import { refusal } from '../bounds.ts';
import { limitRefusal } from '../limit-refusal.ts';
import { nameRefusal, tidyName } from '../name-refusal.ts';
import { newPlan, standIn } from '../new-plan.ts';
import { ownNameRefusal } from '../own-name.ts';
import type { FitUp, Plan, Reading, Scenario, SurveyTable } from '../plan.ts';
import { planClash } from '../plan-clash.ts';
import { matters } from '../stand-ins.ts';
import { rowsRefusal, tableNamed } from '../tables.ts';
import type { PlanDocument } from './document.ts';
import type { Fault } from './fault-of-issue.ts';
import { present } from './present.ts';
import { readingsOf } from './readings-of.ts';
import { Stop, twice } from './stop.ts';

/** A plan read from a document, and what was done to it on the way. */
export interface PlanRead {
  readonly plan: Plan;
  readonly notes: readonly string[];
}

const named = (what: string, name: string, where: string): string => {
  const tidy = tidyName(name);
  const why = nameRefusal(what, tidy);
  if (why !== undefined) throw new Stop(where, why);
  return tidy;
};

/** Base values, with the template's own for what the file lacks. */
function baseOf(document: PlanDocument, notes: string[]): ReadonlyMap<string, Reading> {
  const given = readingsOf(document.inputs, 'inputs', notes);
  const missing = inputs.filter((cell) => !given.has(cell.name) && matters(document, cell.name));
  if (missing.length > 0) {
    const names = missing.map((cell) => cell.name).join(', ');
    notes.push(
      missing.length === 1
        ? `This input is missing from the file and holds the workbook's own stand-in: ${names}.`
        : `These ${missing.length} inputs are missing from the file and hold the workbook's own stand-ins: ${names}.`,
    );
  }
  return new Map(inputs.map((cell) => [cell.name, given.get(cell.name) ?? standIn(cell)]));
}

function scenariosOf(document: PlanDocument, notes: string[]): readonly Scenario[] {
  const scenarios = document.scenarios.map((row, i): Scenario => {
    const where = `scenarios, row ${i + 1} (${quoted(row.name)})`;
    return {
      name: named('a scenario', row.name, where),
      ...(row.note === undefined ? {} : { note: row.note }),
      overrides: readingsOf(row.overrides, `${where}, overrides`, notes),
    };
  });
  twice(
    scenarios.map((it) => it.name),
    'scenarios',
  );
  return scenarios;
}

function lockedOf(document: PlanDocument): ReadonlySet<string> {
  twice(document.locked, 'locked');
  document.locked.forEach((name, i) => {
    const where = `locked, row ${i + 1}`;
    if (inputNamed(name)?.kind !== 'choice')
      throw new Stop(where, `${where}: ${name} is no choice of this workbook.`);
  });
  return new Set(document.locked);
}

function tableOf({ notes, ...table }: PlanDocument['tables'][number], where: string): SurveyTable {
  if (notes === undefined) return table;
  if (notes.length !== table.rows.length) {
    throw new Stop(
      `${where}, notes`,
      `The table ${table.name} has ${table.rows.length} rows, but ${notes.length} notes beside them.`,
    );
  }
  return {
    ...table,
    notes: notes.map((it) => {
      if (it === null) return null;
      const { off_by, ...rest } = it;
      return present({ ...rest, offBy: off_by });
    }),
  };
}

function drilledOf(fit: PlanDocument['fit']): FitUp['drilled'] {
  twice(
    fit.drilled.map((it) => it.name),
    'fit, drilled',
  );
  return new Map(
    fit.drilled.map(({ name, ...rest }, i) => {
      const where = `fit, drilled, row ${i + 1} (${name})`;
      const cell = inputNamed(name);
      if (cell?.kind !== 'choice') throw new Stop(where, `${where}: ${name} is no choice of this workbook.`);
      const why = refusal(cell, rest.planned);
      if (why !== undefined) throw new Stop(where, why);
      return [name, present(rest)];
    }),
  );
}

function fitOf({ fit }: PlanDocument, notes: string[]): FitUp {
  twice(
    fit.steps.map((it) => it.step),
    'fit, steps',
  );
  twice(
    fit.handover.map((it) => it.name),
    'fit, handover',
  );
  return {
    fitted: readingsOf(fit.fitted, 'fit, fitted', notes),
    drilled: drilledOf(fit),
    steps: fit.steps.map(present),
    wentOn: fit.went_on.map((it) => present({ ...it, despite: it.despite.map(present) })),
    unticked: fit.unticked.map(({ ticked_by, ticked_when, ...rest }) =>
      present({ ...rest, tickedBy: ticked_by, tickedWhen: ticked_when }),
    ),
    handover: new Map(fit.handover.map((it) => [it.name, it.text])),
  };
}

/** Why a table cannot stand beside what the plan has; the survey's own tables have the survey's columns. */
function tableNameRefusal(plan: Plan, { name, columns }: PlanDocument['tables'][number]): string | undefined {
  const known = tableNamed(name);
  if (known === undefined) return ownNameRefusal(plan, name);
  if (plan.tables.some((table) => table.name === name)) return `There is a table named ${name} already.`;
  const wanted = known.columns.map((column) => column.name);
  return wanted.join() === columns.join()
    ? undefined
    : `The table ${name} has the columns ${columns.join(', ')}; they must be ${wanted.join(', ')}.`;
}

/** Tables and own cells one after the other, so that each name is held against those before it. */
function withOwn(plan: Plan, document: PlanDocument): Plan {
  let current = plan;
  document.tables.forEach((table, i) => {
    const where = `tables, row ${i + 1} (${table.name})`;
    const why = tableNameRefusal(current, table);
    if (why !== undefined) throw new Stop(where, why);
    twice(table.columns, `${where}, columns`);
    const uneven = table.rows.findIndex((row) => row.length !== table.columns.length);
    if (uneven >= 0) {
      throw new Stop(
        `${where}, rows, row ${uneven + 1}`,
        `The table ${table.name} has ${table.columns.length} columns, but its row ${uneven + 1} has ${table.rows[uneven]?.length}.`,
      );
    }
    const known = tableNamed(table.name);
    const misfit = known === undefined ? undefined : rowsRefusal(known, table.rows);
    if (misfit !== undefined) throw new Stop(`${where}, rows`, misfit);
    current = { ...current, tables: [...current.tables, tableOf(table, where)] };
  });
  document.own_cells.forEach((row, i) => {
    const why = ownNameRefusal(current, row.name);
    if (why !== undefined) throw new Stop(`own_cells, row ${i + 1} (${row.name})`, why);
    current = { ...current, ownCells: [...current.ownCells, present(row)] };
  });
  return current;
}

function withLimits(plan: Plan, document: PlanDocument): Plan {
  twice(
    document.limits.map((limit) => limit.name),
    'limits',
  );
  const limits = document.limits.map((row, i) => {
    const limit = present(row);
    const why = limitRefusal(limit, (name) => plan.ownCells.some((cell) => cell.name === name));
    if (why !== undefined) throw new Stop(`limits, row ${i + 1} (${row.name})`, why);
    return limit;
  });
  return { ...plan, limits };
}

function studiesOf(document: PlanDocument): Plan['studies'] {
  return document.studies.map(({ study, settings }, i) => {
    twice(
      settings.map((it) => it.name),
      `studies, row ${i + 1} (${study}), settings`,
    );
    return { study, settings: Object.fromEntries(settings.map((it) => [it.name, it.value])) };
  });
}

function read(document: PlanDocument): PlanRead {
  const notes: string[] = [];
  const title = named('a plan', document.title, 'title');
  const base: Plan = {
    ...newPlan(title),
    units: document.units,
    inputs: baseOf(document, notes),
    notes: document.notes,
    scenarios: scenariosOf(document, notes),
    locked: lockedOf(document),
    studies: studiesOf(document),
    fit: fitOf(document, notes),
  };
  const active = document.active === null ? null : tidyName(document.active);
  if (active !== null && !base.scenarios.some((it) => it.name === active)) {
    throw new Stop('active', `The plan shows the scenario “${quoted(active)}”, which it does not have.`);
  }
  const plan = withLimits(withOwn({ ...base, active }, document), document);
  const clash = planClash(plan);
  if (clash !== undefined) {
    const where = clash.scenario === null ? 'inputs' : `scenarios, ${quoted(clash.scenario)}`;
    throw new Stop(where, clash.why);
  }
  return { plan, notes };
}

/** The plan that a document holds, or its first fault. */
export function planOf(document: PlanDocument): PlanRead | Fault {
  try {
    return read(document);
  } catch (error) {
    if (error instanceof Stop) return error.fault;
    throw error;
  }
}
