import { parseEntry } from '../../units/parse-entry.ts';

/** The unit of a bare length. */
export type Bare = 'mm' | 'in';

/** A length without a unit that is far from usual in the unit it is taken for, and usual in the other. */
export interface UnitDoubt {
  /** Under which it is remembered that the question was answered. */
  readonly key: string;
  readonly label: string;
  readonly typed: string;
  readonly meant: Bare;
  /** What it comes to in either unit, mm. */
  readonly in: Readonly<Record<Bare, number>>;
  /** mm. */
  readonly usual: readonly [low: number, high: number];
}

export interface AskedFor {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly usual?: readonly [low: number, high: number] | undefined;
}

const OTHER: Readonly<Record<Bare, Bare>> = { mm: 'in', in: 'mm' };

export const otherUnit = (bare: Bare): Bare => OTHER[bare];

/** A length in mm with its bare figures taken for a unit; undefined when the text is none. */
function lengthIn(typed: string, bare: Bare): number | undefined {
  const entry = parseEntry(typed, { name: '', kind: 'length', unit: 'mm', bare });
  return entry.ok && !entry.empty && typeof entry.value === 'number' ? entry.value : undefined;
}

/** Whether a text is a length that means one thing in millimetres and another in inches. */
export const isBareLength = (typed: string): boolean => lengthIn(typed, 'mm') !== lengthIn(typed, 'in');

/** The text with the unit that its bare length is in. */
export const inUnit = (typed: string, unit: Bare): string =>
  isBareLength(typed) ? `${typed.trim()} ${unit}` : typed;

const isWithin = (value: number, [low, high]: readonly [number, number]): boolean =>
  value >= low && value <= high;

/** Beyond an end by more than half the range, or not within twice and half of it. */
function isFar(value: number, [low, high]: readonly [number, number]): boolean {
  if (isWithin(value, [low, high])) return false;
  const end = value < low ? low : high;
  const ratio = value / end;
  return Math.abs(value - end) > (high - low) / 2 || !(ratio > 0.5 && ratio < 2);
}

/** Whether a text may have been meant in the other unit than the one it would be taken for. */
export function unitDoubt(
  { key, label, unit, usual }: AskedFor,
  typed: string,
  meant: Bare,
): UnitDoubt | undefined {
  if (unit !== 'mm' || usual === undefined) return undefined;
  const [mm, inches] = [lengthIn(typed, 'mm'), lengthIn(typed, 'in')];
  if (mm === undefined || inches === undefined || mm === inches) return undefined;
  const as = { mm, in: inches };
  if (!isFar(as[meant], usual) || !isWithin(as[otherUnit(meant)], usual)) return undefined;
  return { key, label, typed: typed.trim(), meant, in: as, usual };
}
