import type { State } from '../calc/limits/judge.ts';

/** What the limit mark shows. */
export interface Marked {
  readonly state: State;
  readonly value: number | undefined;
  readonly low: number | undefined;
  readonly high: number | undefined;
  /** Room over the span or the single bound. */
  readonly ratio: number | undefined;
  readonly graded: boolean;
}

export type Peg =
  | { readonly form: 'ring' | 'square'; readonly x: number }
  /** A ring with the half next to its jaw filled. */
  | { readonly form: 'near'; readonly x: number; readonly filled: 'left' | 'right' };

/** The mark in its own box of 64 × 20. */
export interface MarkGeometry {
  readonly slot: readonly [from: number, to: number];
  readonly jaws: readonly number[];
  /** Open arrows at the ends without a bound. */
  readonly arrows: readonly ('left' | 'right')[];
  readonly dashed: boolean;
  readonly peg: Peg | undefined;
}

export const MARK_WIDTH = 64;
export const MARK_HEIGHT = 20;
export const SLOT_Y = 10;

const LOW_JAW = 16;
const HIGH_JAW = 48;
const LEFT_END = 4;
const RIGHT_END = 60;
const MIDDLE = 32;
const OUTSIDE_OF_YES_NO = 50;
const TOUCHING = 6.5;
const OUTSIDE = 8.5;
/** Nearest an open ring may stand to a jaw without seeming to touch it. */
const CLEAR = 8;

const clamped = (x: number, from: number, to: number): number => Math.min(to, Math.max(from, x));

/** Distance of the ring from the box's edge on the side of its single jaw. */
const besideOne = (ratio: number): number =>
  Number.isFinite(ratio) ? 24 + (28 * ratio) / (ratio + 0.5) : 52;

const hasBoth = ({ low, high }: Marked): boolean => low !== undefined && high !== undefined;

/** Whether the high bound is the nearer one, or the only one. */
function isNearHigh({ value, low, high }: Marked): boolean {
  if (high === undefined) return false;
  if (low === undefined) return true;
  return value !== undefined && high - value < value - low;
}

function insideX(it: Marked): number {
  const { value, low, high, ratio } = it;
  if (value !== undefined && low !== undefined && high !== undefined) {
    const share = high > low ? (value - low) / (high - low) : 0.5;
    return clamped(LOW_JAW + share * (HIGH_JAW - LOW_JAW), LOW_JAW + CLEAR, HIGH_JAW - CLEAR);
  }
  const along = besideOne(Math.max(0, ratio ?? 0));
  return high === undefined ? along : MARK_WIDTH - along;
}

function pegOf(it: Marked): Peg | undefined {
  if (it.state === 'no answer' || it.state === 'does not apply') return undefined;
  if (!it.graded) {
    return it.state === 'outside' ? { form: 'square', x: OUTSIDE_OF_YES_NO } : { form: 'ring', x: MIDDLE };
  }
  const high = isNearHigh(it);
  if (it.state === 'inside') return { form: 'ring', x: insideX(it) };
  if (it.state === 'near') {
    return high
      ? { form: 'near', x: HIGH_JAW - TOUCHING, filled: 'right' }
      : { form: 'near', x: LOW_JAW + TOUCHING, filled: 'left' };
  }
  // A length that must exist and does not has no room: it stands outside a low jaw at nothing.
  const belowNothing = it.ratio === undefined;
  return high && !belowNothing
    ? { form: 'square', x: HIGH_JAW + OUTSIDE }
    : { form: 'square', x: LOW_JAW - OUTSIDE };
}

function jawsOf(it: Marked): number[] {
  if (!it.graded) return [MIDDLE];
  const mustExist = it.state === 'outside' && it.ratio === undefined;
  return [
    ...(it.low !== undefined || mustExist ? [LOW_JAW] : []),
    ...(it.high !== undefined ? [HIGH_JAW] : []),
  ];
}

/** Slot, jaws and peg: the peg stands where the value stands, so the mark says which bound and how much room. */
export function markGeometry(it: Marked): MarkGeometry {
  const jaws = jawsOf(it);
  const dashed = it.state === 'no answer' || it.state === 'does not apply';
  const peg = pegOf(it);
  if (!it.graded) return { slot: [LEFT_END + 4, RIGHT_END - 4], jaws, arrows: [], dashed, peg };
  const openLeft = !jaws.includes(LOW_JAW);
  const openRight = !jaws.includes(HIGH_JAW);
  const isOpen = !hasBoth(it);
  return {
    slot: [openLeft ? LEFT_END : LOW_JAW, openRight ? RIGHT_END : HIGH_JAW],
    jaws,
    arrows: [
      ...(isOpen && openLeft ? ['left' as const] : []),
      ...(isOpen && openRight ? ['right' as const] : []),
    ],
    dashed,
    peg,
  };
}
