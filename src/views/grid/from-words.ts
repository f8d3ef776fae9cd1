import type { Origin, Plan } from '../../plan/plan.ts';
import { backingOf } from '../../session/backing.ts';
import { shortOf } from '../parts/show.ts';
import type { Facts } from './facts.ts';
import type { CellRow } from './rows.ts';

export const ORIGIN: Readonly<Record<Origin, string>> = {
  reading: 'reading',
  manual: 'gear’s manual',
  'stand-in': 'stand-in',
  assumed: 'assumed',
  choice: 'choice',
};

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const nothing = (): null => null;

/** "from shims, shim thickness": the cells that a formula uses, each once. */
export function formulaFrom(formula: string, plan: Plan): string {
  const { pieces } = backingOf(formula, plan, nothing);
  const names = pieces.flatMap((piece) => (piece.kind === 'cell' ? [piece.name] : []));
  if (names.length === 0) return 'a formula';
  return `from ${[...new Set(names)].map((name) => lowerFirst(shortOf(name, plan))).join(', ')}`;
}

/** Where a row's value comes from, in words. */
export function fromWords(row: CellRow, facts: Facts, plan: Plan): string {
  const { reading, own, locked, apart, unused } = facts;
  if (row.kind === 'own') return own?.formula === undefined ? 'own cell' : formulaFrom(own.formula, plan);
  if (row.cell.kind === 'result') return formulaFrom(row.cell.formula, plan);
  if (reading === undefined) return '';
  if (locked) return 'already drilled';
  if (unused !== undefined) return unused;
  if (reading.formula !== undefined) {
    const from = formulaFrom(reading.formula, plan);
    return facts.standIn ? `${ORIGIN['stand-in']}, ${from}` : from;
  }
  const origin = ORIGIN[reading.origin];
  if (!apart || plan.active === null) return origin;
  return reading.origin === 'choice' ? plan.active : `${origin}, ${plan.active}`;
}
