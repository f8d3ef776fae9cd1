import { useId } from 'react';
import type { Standing } from '../../studies/standing.ts';
import type { LimitTurns } from '../../studies/turning.ts';
import { standingAt, stretches } from './strip-parts.ts';

interface Props {
  readonly of: LimitTurns;
  readonly low: number;
  readonly high: number;
  readonly present: number | null;
  readonly width: number;
  /** The steps of a whole-number input, each drawn by itself. */
  readonly steps: readonly number[];
}

const HEIGHT = 22;
/** Ground kept free at both ends, so that a step there is whole, px. */
export const EDGE = 6;

const SQUARE = 8;

/** One step as the limit mark's peg stands: a ring where it holds, a filled square where it is outside. */
function Step({ x, standing }: { readonly x: number; readonly standing: Standing }) {
  if (standing === 'outside') {
    return (
      <rect
        className="turn-solid"
        x={x - SQUARE / 2}
        y={(HEIGHT - SQUARE) / 2}
        width={SQUARE}
        height={SQUARE}
      />
    );
  }
  return standing === 'holds' ? <circle className="turn-ring" cx={x} cy={HEIGHT / 2} r={SQUARE / 2} /> : null;
}

/** How one limit stands along the range: clear where it holds, hatched where it is outside, dashed without an answer. */
export function Strip({ of, low, high, present, width, steps }: Props) {
  const id = useId();
  const x = (value: number): number => EDGE + ((value - low) / (high - low)) * (width - 2 * EDGE);
  const all = stretches(of, low, high);
  return (
    <svg className="turn-strip" width={width} height={HEIGHT} aria-hidden="true" focusable="false">
      <defs>
        <pattern
          id={`${id}h`}
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line className="turn-hatch" x1="0.5" y1="0" x2="0.5" y2="7" />
        </pattern>
      </defs>
      {all.map(({ from, to, standing }) => {
        const [left, right] = [x(from), x(to)];
        if (standing === 'outside') {
          return (
            <rect
              key={from}
              x={left}
              y="0"
              width={Math.max(1, right - left)}
              height={HEIGHT}
              fill={`url(#${id}h)`}
            />
          );
        }
        return (
          <line
            key={from}
            className={
              standing === 'holds' ? 'turn-holds' : `turn-none turn-${standing.replaceAll(' ', '-')}`
            }
            x1={left}
            x2={right}
            y1={HEIGHT / 2}
            y2={HEIGHT / 2}
          />
        );
      })}
      {present !== null && (
        <line className="turn-present" x1={x(present)} x2={x(present)} y1="0" y2={HEIGHT} />
      )}
      {steps.length === 0
        ? of.turns.map(({ at }) => (
            <line key={at} className="turn-tick" x1={x(at)} x2={x(at)} y1="0" y2={HEIGHT} />
          ))
        : steps.map((it) => <Step key={it} x={x(it)} standing={standingAt(all, it)} />)}
    </svg>
  );
}
