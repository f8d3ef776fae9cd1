import type { OwnCell, Reading, Units } from '../../plan/plan.ts';
import type { Draft, Session } from '../../session/session.ts';
import type { Answer } from '../../workbook/engine.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import type { Drafts } from './drafts.ts';
import type { CellRow } from './rows.ts';
import { worstOf } from './worst-limit.ts';

/** All that a row's look follows from. Each part is the same object until it changes. */
export interface Facts {
  readonly answer: Answer | undefined;
  readonly reading: Reading | undefined;
  readonly own: OwnCell | undefined;
  /** The limit that says most about the row's value. */
  readonly limit: LimitAnswer | undefined;
  /** A refused text for the value, and for any other column. */
  readonly draft: Draft | undefined;
  readonly labelDraft: Draft | undefined;
  readonly unitDraft: Draft | undefined;
  readonly offByDraft: Draft | undefined;
  readonly locked: boolean;
  readonly changed: boolean;
  readonly units: Units;
}

/** What a row stands on now. */
export function factsOf(session: Session, drafts: Drafts, row: CellRow): Facts {
  const { name } = row;
  const { plan } = session;
  return {
    answer: session.answer(name),
    reading: row.kind === 'book' && row.cell.kind !== 'result' ? session.reading(name) : undefined,
    own: row.kind === 'own' ? plan.ownCells.find((cell) => cell.name === name) : undefined,
    limit: worstOf(session.judgement, name),
    draft: session.draft(name) ?? drafts.get(name, 'value'),
    labelDraft: drafts.get(name, 'label'),
    unitDraft: drafts.get(name, 'unit'),
    offByDraft: drafts.get(name, 'offBy'),
    locked: plan.locked.has(name),
    changed: session.changed.has(name),
    units: plan.units,
  };
}

/** Whether two rows' looks are the same without working either out. */
export const sameFacts = (a: Facts, b: Facts): boolean =>
  a.answer === b.answer &&
  a.reading === b.reading &&
  a.own === b.own &&
  a.limit === b.limit &&
  a.draft === b.draft &&
  a.labelDraft === b.labelDraft &&
  a.unitDraft === b.unitDraft &&
  a.offByDraft === b.offByDraft &&
  a.locked === b.locked &&
  a.changed === b.changed &&
  a.units === b.units;
