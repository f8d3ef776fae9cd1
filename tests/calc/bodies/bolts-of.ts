import type { CellName } from '../../../src/plan/names.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { Workbook } from '../../../src/workbook/workbook.ts';
import { footBolts, lowerBolts, type Worst } from './bracket.ts';
import { FITS, type Mount } from './mounts.ts';

/** What free bodies come to over what the library says: above 1 the library is on the unsafe side. */
export interface Bolts {
  readonly lower: Worst;
  readonly foot: Worst;
}

const over = (body: Worst, tension: number, shear: number): Worst => ({
  tension: body.tension / tension,
  shear: body.shear / shear,
});

/** A mount's bolts; null where it cannot be built as drawn, or its bolts have no answer. */
export function boltsOf(book: Workbook, plan: Plan, mount: Mount): Bolts | null {
  book.show(plan, null, new Map(Object.entries(mount)));
  const ask = (name: string): number => {
    const { value } = book.answer(name as CellName);
    return typeof value === 'number' ? value : Number.NaN;
  };
  const states = new Map(book.judgement().limits.map((it) => [it.name, it.verdict.state]));
  if (FITS.some((name) => ['outside', 'no answer'].includes(states.get(name) ?? ''))) return null;
  const told = ['bolt_tension', 'bolt_shear', 'foot_bolt_tension', 'foot_bolt_shear'].map(ask);
  if (told.some(Number.isNaN)) return null;
  const [tension = 0, shear = 0, footTension = 0, footShear = 0] = told;
  return { lower: over(lowerBolts(ask), tension, shear), foot: over(footBolts(ask), footTension, footShear) };
}
