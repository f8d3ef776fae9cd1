import { memo } from 'react';
import {
  MARK_HEIGHT,
  MARK_WIDTH,
  type Marked,
  markGeometry,
  type Peg,
  SLOT_Y,
} from '../../drawings/mark-geometry.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import './mark.css';

const RADIUS = 5;
const SQUARE = 12;
const ARROW = 4;

const arrowPath = (side: 'left' | 'right'): string =>
  side === 'left'
    ? `M${4 + ARROW} ${SLOT_Y - ARROW} L4 ${SLOT_Y} L${4 + ARROW} ${SLOT_Y + ARROW}`
    : `M${60 - ARROW} ${SLOT_Y - ARROW} L60 ${SLOT_Y} L${60 - ARROW} ${SLOT_Y + ARROW}`;

const halfPath = (filled: 'left' | 'right'): string =>
  `M0 ${-RADIUS} A${RADIUS} ${RADIUS} 0 0 ${filled === 'left' ? 0 : 1} 0 ${RADIUS} Z`;

function PegShape({ peg }: { readonly peg: Peg }) {
  if (peg.form === 'square') {
    return <rect className="mark-solid" x={-SQUARE / 2} y={-SQUARE / 2} width={SQUARE} height={SQUARE} />;
  }
  return (
    <>
      <circle className="mark-ring" r={RADIUS} />
      {peg.form === 'near' && <path className="mark-solid" d={halfPath(peg.filled)} />}
    </>
  );
}

interface Props {
  readonly limit: Marked;
  /** 42 × 13 instead of 64 × 20. */
  readonly small?: boolean;
}

/** The limit mark: a peg in a slot. Decoration to a screen reader; the word beside it is the text. */
export const Mark = memo(function Mark({ limit, small = false }: Props) {
  const { slot, jaws, arrows, dashed, peg } = markGeometry(limit);
  return (
    <svg
      className={small ? 'mark mark-small' : 'mark'}
      viewBox={`0 0 ${MARK_WIDTH} ${MARK_HEIGHT}`}
      aria-hidden="true"
      focusable="false"
      data-dashed={dashed ? '' : undefined}
    >
      <line className="mark-slot" x1={slot[0]} x2={slot[1]} y1={SLOT_Y} y2={SLOT_Y} />
      {arrows.map((side) => (
        <path key={side} className="mark-slot" d={arrowPath(side)} />
      ))}
      {jaws.map((x) => (
        <line key={x} className="mark-jaw" x1={x} x2={x} y1={2} y2={18} />
      ))}
      {peg !== undefined && (
        <g className="mark-peg" style={{ transform: `translate(${peg.x}px, ${SLOT_Y}px)` }}>
          <PegShape peg={peg} />
        </g>
      )}
    </svg>
  );
});

/** What of a limit the mark shows. */
export const markedOf = ({ verdict, value, low, high, graded }: LimitAnswer): Marked => ({
  state: verdict.state,
  ratio: verdict.ratio,
  value,
  low,
  high,
  graded,
});
