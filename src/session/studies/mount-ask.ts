import { inputNamed } from '../../plan/book.ts';
import { type Plan, readingOf, type Units } from '../../plan/plan.ts';
import { stepOf } from '../../plan/step-of.ts';
import type { Stock } from '../../studies/first-mount/ask.ts';
import { contentsOf } from '../../workbook/contents.ts';
import { uses } from '../../workbook/loops.ts';
import { usuallyFreed } from './free-choices.ts';
import type { MountCall } from './mounting.ts';
import { proposalsAsk } from './proposals-ask.ts';

/** Sheets for shims and a wedge's thin edge, mm, in round figures of the unit one buys in: 3⁄8 and 1⁄2 in, 3⁄16 in. Assumed. */
const SHEETS: Readonly<Record<'mm' | 'in', readonly number[]>> = { mm: [10, 12], in: [9.525, 12.7] };
const WEDGE: Readonly<Record<'mm' | 'in', number>> = { mm: 5, in: 4.7625 };

/** What a mount is made up from in a plan's units. */
function stockIn(units: Units): Stock {
  const unit = units === 'in' ? 'in' : 'mm';
  const cell = inputNamed('upper_bracket_height');
  return { step: cell === undefined ? 1 : stepOf(cell, units), sheets: SHEETS[unit], wedge: WEDGE[unit] };
}

/** A first mount for a plan in one of its scenarios. */
export function mountAsk(plan: Plan, scenario: string | null): MountCall {
  const { loosened } = proposalsAsk({
    plan,
    scenario,
    free: usuallyFreed(2),
    value: (name) => readingOf(plan, name, scenario)?.value ?? null,
    uses: uses(contentsOf(plan, scenario)),
    stepOf: (cell) => stepOf(cell, plan.units),
  });
  return { scenario, loosened, ...stockIn(plan.units) };
}
