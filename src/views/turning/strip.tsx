import { useId } from 'react';
import type { LimitTurns } from '../../studies/turning.ts';
import { stretches } from './strip-parts.ts';

interface Props {
  readonly of: LimitTurns;
  readonly low: number;
  readonly high: number;
  readonly present: number | null;
  readonly width: number;
}

const HEIGHT = 22;

/** How one limit stands along the range: clear where it holds, hatched where it is past, dashed without an answer. */
export function Strip({ of, low, high, present, width }: Props) {
  const id = useId();
  const x = (value: number): number => 1 + ((value - low) / (high - low)) * (width - 2);
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
      {stretches(of, low, high).map(({ from, to, standing }) => {
        const [left, right] = [x(from), x(to)];
        if (standing === 'past') {
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
      {of.turns.map(({ at }) => (
        <line key={at} className="turn-tick" x1={x(at)} x2={x(at)} y1="0" y2={HEIGHT} />
      ))}
      {present !== null && (
        <line className="turn-present" x1={x(present)} x2={x(present)} y1="0" y2={HEIGHT} />
      )}
    </svg>
  );
}
