import type { Reading, Units } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { formatValue } from '../../units/format-value.ts';

const SHOWN: Readonly<Record<Units, { readonly unit: Units }>> = {
  mm: { unit: 'mm' },
  in: { unit: 'both' },
  both: { unit: 'both' },
};

/** What was understood of a reading, said back; and that it is unusual where it is. */
export function echoOf(cell: InputCell, { value, formula }: Reading, units: Units): string {
  if (formula !== undefined || typeof value !== 'number') return '';
  const words = (it: number): string => formatValue(it, cell.unit, SHOWN[units]);
  const said = `Read as ${words(value)}.`;
  if (cell.usual === undefined) return said;
  const [low, high] = cell.usual;
  if (value >= low && value <= high) return said;
  return `${said} Most lie between ${words(low)} and ${words(high)}: read it once more.`;
}
