import type { Value } from './plan.ts';
import type { InputCell } from './template.ts';

const withUnit = (value: number, cell: InputCell): string =>
  cell.unit === '–' ? String(value) : `${value} ${cell.unit}`;

function allowed(cell: InputCell): string {
  if (cell.only !== undefined) return `one of ${cell.only.join(', ')}`;
  const low =
    cell.above !== undefined
      ? `more than ${withUnit(cell.above, cell)}`
      : cell.min !== undefined
        ? `at least ${withUnit(cell.min, cell)}`
        : undefined;
  const high = cell.max !== undefined ? `at most ${withUnit(cell.max, cell)}` : undefined;
  return [low, high].filter((it) => it !== undefined).join(' and ');
}

const fits = (cell: InputCell, value: number): boolean =>
  Number.isFinite(value) &&
  (cell.type !== 'whole' || Number.isInteger(value)) &&
  (cell.only === undefined || cell.only.includes(value)) &&
  (cell.above === undefined || value > cell.above) &&
  (cell.min === undefined || value >= cell.min) &&
  (cell.max === undefined || value <= cell.max);

/** Why an input cannot hold a value, as one sentence; undefined when it can. Nothing yet is always allowed. */
export function refusal(cell: InputCell, value: Value): string | undefined {
  if (value === null) return undefined;
  if (cell.type === 'flag') {
    return typeof value === 'boolean' ? undefined : `${cell.label} is yes or no, not ${value}.`;
  }
  if (cell.type === 'word') {
    const words = cell.words ?? [];
    return typeof value === 'string' && words.includes(value)
      ? undefined
      : `${cell.label} is one of ${words.join(', ')}, not ${value}.`;
  }
  if (typeof value !== 'number') return `${cell.label} is a number, not ${value}.`;
  if (fits(cell, value)) return undefined;
  if (cell.type === 'whole' && !Number.isInteger(value)) {
    return `${cell.label} is a whole number; ${value} was given, ${allowed(cell)} is allowed.`;
  }
  return `${cell.label} cannot be ${withUnit(value, cell)}: it must be ${allowed(cell)}.`;
}
