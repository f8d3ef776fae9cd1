import { combined } from '../../calc/uncertainty/law.ts';
import { normalBelow } from '../../calc/uncertainty/normal.ts';
import { type Slope, steeper } from '../drivers/slope.ts';
import { correlationBetween, type ErrorModel } from '../uncertain/error-model.ts';
import { lawOf, type NamedLaw } from '../uncertain/laws.ts';
import { standardOf } from '../uncertain/reading-error.ts';

/** A limit's room by the law of propagation of uncertainty (JCGM 100:2008, 5.1.2 and 5.2.2). */
export interface FirstOrder {
  readonly room: number;
  /** Combined standard uncertainty of the room. */
  readonly deviation: number;
  /** Chance that it does not hold, were the room normal. */
  readonly fails: number;
  /** The reading, or the survey table, with the largest part in the variance; absent when nothing varies. */
  readonly largest?: { readonly name: string; readonly part: number; readonly law: NamedLaw };
  /** A reading that matters has another slope to one side than to the other. */
  readonly kink: boolean;
}

/** Part of the variance from which on a kink is worth a word. */
const MATTERS = 0.02;

/** The reading with the largest part in the variance; rows of one survey table count together. */
function largestOf({ errors }: ErrorModel, single: readonly number[]): NonNullable<FirstOrder['largest']> {
  const parts = new Map<string, number>();
  const laws = new Map<string, NamedLaw>();
  for (const [i, error] of errors.entries()) {
    const name = error.fit?.of ?? error.name;
    parts.set(name, (parts.get(name) ?? 0) + (single[i] ?? 0));
    laws.set(name, lawOf(error));
  }
  const [name, part] = [...parts].reduce((a, b) => (b[1] > a[1] ? b : a));
  return { name, part, law: laws.get(name) ?? 'even' };
}

/** First-order spread and chance of one limit from its slopes; null where it has none. */
export function firstOrder(
  model: ErrorModel,
  room: number,
  slopes: readonly (Slope | null)[] | undefined,
): FirstOrder | null {
  if (!Number.isFinite(room) || slopes === undefined || slopes.includes(null)) return null;
  const parts = model.errors.map((error, i) => {
    const slope = slopes[i];
    return { part: slope ? steeper(slope) * standardOf(error) : 0 };
  });
  const deviation = combined(parts, model.share > 0 ? (i, j) => correlationBetween(model, i, j) : undefined);
  if (deviation === 0) return { room, deviation, fails: room < 0 ? 1 : 0, kink: false };
  const single = parts.map(({ part }) => part ** 2 / parts.reduce((sum, it) => sum + it.part ** 2, 0));
  return {
    room,
    deviation,
    fails: normalBelow(-room / deviation),
    largest: largestOf(model, single),
    kink: single.some((part, i) => part > MATTERS && slopes[i]?.kink === true),
  };
}
