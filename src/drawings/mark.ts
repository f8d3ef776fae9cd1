import { line, pathThrough } from './layout/path.ts';
import type { Primitive } from './layout/primitive.ts';
import { type Px, round } from './layout/px.ts';
import type { LimitState } from './limits.ts';
import { type MarkGeometry, markGeometry, type Peg, SLOT_Y } from './mark-geometry.ts';

export type MarkSize = 'board' | 'cell';

/** What a limit mark is drawn from; a limit without bounds is a yes/no one. */
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

const LOW_END = 4;
const HIGH_END = 60;
const JAW_TOP = 2;
const JAW_FOOT = 18;
const ARROW = 4;
const RING = 5;
const SQUARE = 12;

/** A cell's mark is 42 by 13. */
const CELL = 0.65;

/** Places of the board's mark brought to a size. */
type Scaled = (length: number) => number;

/** Half a disc on the side of a jaw, inside the ring. */
function halfDisc(x: number, filled: 'left' | 'right', k: Scaled): string {
  const sweep = filled === 'left' ? 0 : 1;
  return `M${k(x)} ${k(SLOT_Y - RING)}A${k(RING)} ${k(RING)} 0 0 ${sweep} ${k(x)} ${k(SLOT_Y + RING)}Z`;
}

function drawPeg(peg: Peg, k: Scaled): Primitive[] {
  if (peg.form === 'square') {
    const side = k(SQUARE);
    return [
      {
        kind: 'rect',
        role: 'peg-outside',
        x: k(peg.x - SQUARE / 2),
        y: k(SLOT_Y - SQUARE / 2),
        width: side,
        height: side,
      },
    ];
  }
  const ring: Primitive = { kind: 'circle', role: 'peg', cx: k(peg.x), cy: k(SLOT_Y), r: k(RING) };
  return peg.form === 'near'
    ? [ring, { kind: 'path', role: 'peg-half', d: halfDisc(peg.x, peg.filled, k) }]
    : [ring];
}

/** Slot and jaws; a side without a bound ends in an open arrow. */
function drawSlot({ slot: [from, to], jaws, arrows, dashed }: MarkGeometry, k: Scaled): Primitive[] {
  const at = (x: number, y: number): Px => ({ x: k(x), y: k(y) });
  const arrow = (x: number, towards: 1 | -1): string => {
    const back = x - towards * ARROW;
    return pathThrough([at(back, SLOT_Y - ARROW), at(x, SLOT_Y), at(back, SLOT_Y + ARROW)], false);
  };
  const heads = arrows.map((side) => (side === 'left' ? arrow(LOW_END, -1) : arrow(HIGH_END, 1))).join('');
  const uprights = jaws.map((x) => line(at(x, JAW_TOP), at(x, JAW_FOOT))).join('');
  return [
    { kind: 'path', role: dashed ? 'slot-dashed' : 'slot', d: line(at(from, SLOT_Y), at(to, SLOT_Y)) },
    ...(heads === '' ? [] : [{ kind: 'path', role: 'slot', d: heads } as const]),
    { kind: 'path', role: dashed ? 'jaw-dashed' : 'jaw', d: uprights },
  ];
}

/** The limit mark: slot, jaws and the peg that stands where the value stands. 64 × 20 px, in a cell 42 × 13. */
export function drawMark({ state, value, low, high, roomRatio }: MarkInput, size: MarkSize): Mark {
  const geometry = markGeometry({
    state,
    value: value ?? undefined,
    low: low ?? undefined,
    high: high ?? undefined,
    ratio: roomRatio ?? undefined,
    graded: low !== null || high !== null,
  });
  const factor = size === 'cell' ? CELL : 1;
  const k: Scaled = (length) => round(length * factor);
  const [width, height] = size === 'cell' ? [42, 13] : [64, 20];
  const peg = geometry.peg === undefined ? [] : drawPeg(geometry.peg, k);
  return { width, height, primitives: [...drawSlot(geometry, k), ...peg] };
}
