import { line, pathThrough } from './layout/path.ts';
import type { Primitive } from './layout/primitive.ts';
import { type Px, round } from './layout/px.ts';
import type { LimitState } from './limits.ts';

export type MarkSize = 'board' | 'cell';

/** What a limit mark is drawn from. */
export interface MarkInput {
  readonly state: LimitState;
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Signed room over the span of the limit; null for yes/no limits and without an answer. */
  readonly roomRatio: number | null;
}

/** A limit mark: a peg in a slot, as primitives in its own box. */
export interface Mark {
  readonly width: number;
  readonly height: number;
  readonly primitives: readonly Primitive[];
}

/** Places on the board's mark, px; a cell's is the same made smaller. */
const MIDDLE = 10;
const LOW_JAW = 16;
const HIGH_JAW = 48;
const ONE_JAW = 32;
const LOW_END = 4;
const HIGH_END = 60;
const JAW_TOP = 2;
const JAW_FOOT = 18;
const ARROW = 4;
const RING = 5;
/** A near peg touches its jaw; a past one stands outside it. */
const TOUCHING = 6.5;
const OUTSIDE = 8.5;
const SQUARE = 12;
const YES_NO_PAST = 50;

/** A cell's mark is 42 by 13. */
const CELL = 0.65;

type Jaw = 'low' | 'high';

/** The bound that the value is nearer to, or has passed. */
function nearerJaw({ value, low, high }: MarkInput): Jaw {
  if (low === null) return 'high';
  if (high === null || value === null) return 'low';
  return value - low <= high - value ? 'low' : 'high';
}

const jawX = (jaw: Jaw): number => (jaw === 'low' ? LOW_JAW : HIGH_JAW);
const inwards = (jaw: Jaw): 1 | -1 => (jaw === 'low' ? 1 : -1);

/** Middle of a ring inside the slot: by its share between two jaws, or by its room from a single one. */
function insideX(it: MarkInput, jaw: Jaw): number {
  const { value, low, high, roomRatio } = it;
  if (low !== null && high !== null && value !== null && high > low) {
    const share = (value - low) / (high - low);
    const x = LOW_JAW + (HIGH_JAW - LOW_JAW) * share;
    return Math.min(HIGH_JAW - TOUCHING - 1, Math.max(LOW_JAW + TOUCHING + 1, x));
  }
  const room = Math.max(0, roomRatio ?? 0);
  const share = Number.isFinite(room) ? room / (room + 0.5) : 1;
  const reach = 24 - LOW_JAW + 28 * share;
  return jawX(jaw) + inwards(jaw) * reach;
}

/** Places of the board's mark brought to a size. */
type Scaled = (length: number) => number;

/** Half a disc on the side of a jaw, inside the ring. */
function halfDisc(x: number, jaw: Jaw, k: Scaled): string {
  const sweep = jaw === 'low' ? 0 : 1;
  return `M${k(x)} ${k(MIDDLE - RING)}A${k(RING)} ${k(RING)} 0 0 ${sweep} ${k(x)} ${k(MIDDLE + RING)}Z`;
}

const ring = (x: number, k: Scaled): Primitive => ({
  kind: 'circle',
  role: 'peg',
  cx: k(x),
  cy: k(MIDDLE),
  r: k(RING),
});

const square = (x: number, k: Scaled): Primitive => ({
  kind: 'rect',
  role: 'peg-past',
  x: k(x - SQUARE / 2),
  y: k(MIDDLE - SQUARE / 2),
  width: k(SQUARE),
  height: k(SQUARE),
});

function peg(it: MarkInput, k: Scaled): Primitive[] {
  const yesNo = it.low === null && it.high === null;
  const jaw = nearerJaw(it);
  switch (it.state) {
    case 'past':
      return [square(yesNo ? YES_NO_PAST : jawX(jaw) - inwards(jaw) * OUTSIDE, k)];
    case 'near': {
      if (yesNo) return [ring(ONE_JAW, k)];
      const x = jawX(jaw) + inwards(jaw) * TOUCHING;
      return [ring(x, k), { kind: 'path', role: 'peg-half', d: halfDisc(x, jaw, k) }];
    }
    case 'inside':
      return [ring(yesNo ? ONE_JAW : insideX(it, jaw), k)];
    default:
      return [];
  }
}

/** Slot and jaws; a side without a bound ends in an open arrow. */
function slot({ state, low, high }: MarkInput, k: Scaled): Primitive[] {
  const dashed = state === 'no answer' || state === 'does not apply';
  const at = (x: number, y: number): Px => ({ x: k(x), y: k(y) });
  const jaw = (x: number): string => line(at(x, JAW_TOP), at(x, JAW_FOOT));
  const arrow = (x: number, towards: 1 | -1): string => {
    const back = x - towards * ARROW;
    return pathThrough([at(back, MIDDLE - ARROW), at(x, MIDDLE), at(back, MIDDLE + ARROW)], false);
  };
  const yesNo = low === null && high === null;
  const from = low === null ? LOW_END : LOW_JAW;
  const to = high === null ? HIGH_END : HIGH_JAW;
  const bounds = [...(low === null ? [] : [LOW_JAW]), ...(high === null ? [] : [HIGH_JAW])];
  const jaws = (yesNo ? [ONE_JAW] : bounds).map(jaw).join('');
  const arrows = yesNo
    ? ''
    : (low === null ? arrow(LOW_END, -1) : '') + (high === null ? arrow(HIGH_END, 1) : '');
  return [
    { kind: 'path', role: dashed ? 'slot-dashed' : 'slot', d: line(at(from, MIDDLE), at(to, MIDDLE)) },
    ...(arrows === '' ? [] : [{ kind: 'path', role: 'slot', d: arrows } as const]),
    { kind: 'path', role: dashed ? 'jaw-dashed' : 'jaw', d: jaws },
  ];
}

/** The limit mark: slot, jaws and the peg that stands where the value stands. 64 × 20 px, in a cell 42 × 13. */
export function drawMark(it: MarkInput, size: MarkSize): Mark {
  const factor = size === 'cell' ? CELL : 1;
  const k: Scaled = (length) => round(length * factor);
  const [width, height] = size === 'cell' ? [42, 13] : [64, 20];
  return { width, height, primitives: [...slot(it, k), ...peg(it, k)] };
}
