import { inputNamed } from '../../plan/book.ts';
import type { OwnCell, Plan } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';

/** Steps along the range of an own cell, about. */
const STEPS = 100;

/** The largest of 1, 2 and 5 times a power of ten that is not above a size. */
function round(size: number): number {
  const ten = 10 ** Math.floor(Math.log10(size));
  return ten * (size >= 5 * ten ? 5 : size >= 2 * ten ? 2 : 1);
}

/** An own cell that holds a plain number as something to vary: from 0 to twice where it stands. */
function ownAsInput({ name, label, unit, value }: OwnCell & { readonly value: number }): InputCell {
  const far = value === 0 ? 1 : 2 * value;
  const usual: [number, number] = value === 0 ? [-1, 1] : [Math.min(0, far), Math.max(0, far)];
  return {
    kind: 'input',
    name,
    label,
    short: label,
    help: `${label}, a cell of your own.`,
    type: 'number',
    unit,
    value,
    off_by: 0,
    usual,
    step: round((usual[1] - usual[0]) / STEPS),
    where: 'reading',
  };
}

const isVaried = ({ type, usual }: InputCell): boolean =>
  (type === 'number' || type === 'whole') && usual !== undefined;

const isPlain = (cell: OwnCell): cell is OwnCell & { readonly value: number } =>
  cell.formula === undefined && cell.value !== null && Number.isFinite(cell.value * 2);

/** The owner's own cells that a study may vary: those that hold a plain number. */
export const ownVaried = ({ ownCells }: Pick<Plan, 'ownCells'>): readonly InputCell[] =>
  ownCells.filter(isPlain).map(ownAsInput);

/** What a study may vary by this name: an input with a usual range, or an own cell that holds a plain number. */
export function variedCell(name: string, plan: Pick<Plan, 'ownCells'>): InputCell | undefined {
  const cell = inputNamed(name);
  if (cell !== undefined) return isVaried(cell) ? cell : undefined;
  return ownVaried(plan).find((it) => it.name === name);
}
