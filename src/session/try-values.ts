import { inputNamed } from '../plan/book.ts';
import { setReading } from '../plan/edit.ts';
import type { Reading, Value } from '../plan/plan.ts';
import { clashWith, enterValue } from '../workbook/enter.ts';
import type { Done, Session } from './session.ts';

/** Puts in several values at once, as one step of undo; where one of them cannot be, none is put in. */
export function tryValues(session: Session, values: ReadonlyMap<string, Value>, label: string): Done {
  const readings = new Map<string, Reading>();
  for (const [name, value] of values) {
    const cell = inputNamed(name);
    if (cell === undefined) return { ok: false, why: `There is no input named ${name}.` };
    const entered = enterValue(cell, value, session.reading(name));
    if (!entered.ok) return entered;
    readings.set(name, entered.reading);
  }
  const why = clashWith(readings, (name) => session.value(name));
  if (why !== undefined) return { ok: false, why };
  return session.edit(label, (plan) => {
    let now = plan;
    for (const [name, reading] of readings) {
      const edited = setReading(now, name, reading);
      if (!edited.ok) return edited;
      now = edited.plan;
    }
    return { ok: true, plan: now };
  });
}
