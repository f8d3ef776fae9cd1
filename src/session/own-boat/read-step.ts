import { newPlan } from '../../plan/new-plan.ts';
import type { Value } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { clashWith, type Entered, enterText } from '../../workbook/enter.ts';
import { asRead } from './ashore.ts';
import type { OwnBoatState } from './own-boat.ts';
import { standInFor } from './stand-in-for.ts';
import { firstInputs } from './steps.ts';
import { signedSlope } from './with-sign.ts';

/** Formulas typed here may name any input; their values are the stand-ins until the plan is there. */
const blank = newPlan('');

const no = (why: string): Entered => ({ ok: false, why });

/** What was typed for one of the first readings, whatever else is typed; undefined when nothing is, or it is left. */
export function readAlone(state: OwnBoatState, cell: InputCell): Entered | undefined {
  if (state.left.has(cell.name)) return undefined;
  const typed = (state.typed.get(cell.name) ?? '').trim();
  if (typed === '') return undefined;
  const { units, lean, lying } = state.answers;
  const signed =
    cell.name === 'transom_rake' ? signedSlope(typed, lean) : ({ ok: true, text: typed } as const);
  if (!signed.ok) return no(signed.why);
  const entered = enterText(cell, signed.text, units === 'in' ? 'in' : 'mm', blank);
  return entered.ok ? { ok: true, reading: asRead(entered.reading, cell, lying) } : entered;
}

/** Values a reading must go together with: those asked before it, and the stand-ins that nobody is asked for. */
function valueBefore(state: OwnBoatState, cell: InputCell, name: string): Value {
  const place = firstInputs.findIndex((it) => it.name === name);
  if (place < 0) return blank.inputs.get(name)?.value ?? null;
  const other = firstInputs[place];
  if (other === undefined || place >= firstInputs.indexOf(cell)) return null;
  const read = readAlone(state, other);
  return read?.ok ? read.reading.value : standInFor(other, state.answers).value;
}

/**
 * One of the first readings, alone and together with those before it: the reading, or the stand-in where it was left
 * to it, or one sentence why it cannot be.
 */
export function readStep(state: OwnBoatState, cell: InputCell): Entered {
  const entered: Entered | undefined = state.left.has(cell.name)
    ? { ok: true, reading: standInFor(cell, state.answers) }
    : readAlone(state, cell);
  if (entered === undefined) {
    return no(`${cell.label} is not read yet. Write it, or take the stand-in.`);
  }
  if (!entered.ok) return entered;
  const together = clashWith(new Map([[cell.name, entered.reading]]), (name) =>
    valueBefore(state, cell, name),
  );
  return together === undefined ? entered : no(together);
}
