import type { OwnCell, Reading, Units } from '../../plan/plan.ts';
import { isStandIn } from '../../plan/stand-ins.ts';
import type { Session } from '../../session/session.ts';
import { unusedWords } from '../../session/unused.ts';
import type { Answer } from '../../workbook/engine.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { type KeptText, keptText } from './kept-text.ts';
import { type GridRow, isCellRow } from './rows.ts';
import { worstOf } from './worst-limit.ts';

/** All that a row's look follows from. Each part is the same object until it changes. */
export interface Facts {
  readonly answer: Answer | undefined;
  readonly reading: Reading | undefined;
  readonly own: OwnCell | undefined;
  /** The limit that says most about the row's value. */
  readonly limit: LimitAnswer | undefined;
  /** Refused texts of the row's cells. */
  readonly valueText: KeptText | undefined;
  readonly labelText: KeptText | undefined;
  readonly unitText: KeptText | undefined;
  readonly offByText: KeptText | undefined;
  readonly locked: boolean;
  /** An input that holds a stand-in, or follows one. */
  readonly standIn: boolean;
  /** Whether the scenario shown has its own value here. */
  readonly apart: boolean;
  readonly changed: boolean;
  /** When an input counts, while it does not. */
  readonly unused: string | undefined;
  readonly units: Units;
  readonly ready: boolean;
}

/** What a row stands on now. */
export function factsOf(session: Session, row: GridRow): Facts {
  const { plan } = session;
  const name = isCellRow(row) ? row.name : '';
  const isInput = row.kind === 'book' && row.cell.kind !== 'result';
  const reading = isInput ? session.reading(name) : undefined;
  return {
    answer: session.answer(name),
    reading,
    own: row.kind === 'own' ? plan.ownCells.find((cell) => cell.name === name) : undefined,
    limit: isInput ? undefined : worstOf(session.judgement, name),
    valueText: keptText(session, row, 'value'),
    labelText: keptText(session, row, 'label'),
    unitText: keptText(session, row, 'unit'),
    offByText: keptText(session, row, 'offBy'),
    locked: plan.locked.has(name),
    standIn: isInput && isStandIn(plan, name),
    apart: isInput && plan.active !== null && reading !== plan.inputs.get(name),
    changed: session.changed.has(name),
    unused: isInput ? unusedWords(name, (other) => session.value(other)) : undefined,
    units: plan.units,
    ready: session.ready,
  };
}

const PARTS = [
  'answer',
  'reading',
  'own',
  'limit',
  'valueText',
  'labelText',
  'unitText',
  'offByText',
  'locked',
  'standIn',
  'apart',
  'changed',
  'unused',
  'units',
  'ready',
] as const satisfies readonly (keyof Facts)[];

/** Whether two rows look the same, without working out how either does. */
export const sameFacts = (a: Facts, b: Facts): boolean => PARTS.every((part) => a[part] === b[part]);
