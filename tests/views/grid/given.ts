import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Units } from '../../../src/plan/plan.ts';
import { Session } from '../../../src/session/session.ts';
import { type Facts, factsOf } from '../../../src/views/grid/facts.ts';
import { type GridRow, isCellRow, rowsOf } from '../../../src/views/grid/rows.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

/** A session on a new plan, with answers. */
export function openSession(units: Units = 'mm'): Session {
  const session = new Session({ ...newPlan('Grid'), units });
  session.attach(new Workbook(session.plan));
  return session;
}

/** The row of a cell, and what it stands on. */
export function rowAndFacts(session: Session, name: string): { row: GridRow; facts: Facts } {
  const rows = rowsOf(
    undefined,
    session.plan.ownCells.map((cell) => cell.name),
  );
  const row = rows.find((it) => isCellRow(it) && it.name === name);
  if (row === undefined) throw new Error(`The grid has no row for ${name}.`);
  return { row, facts: factsOf(session, row) };
}
