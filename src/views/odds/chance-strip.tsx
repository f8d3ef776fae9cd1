import type { Estimate } from '../../calc/uncertainty/interval.ts';
import { LEAST, placeOf, TICKS } from './chance-axis.ts';

interface Props {
  readonly fails: Estimate;
  /** First order's chance; null where there is none. */
  readonly firstOrder: number | null;
  /** Whether the limit can fail at all in its worst case. */
  readonly worstFails: boolean;
  readonly width: number;
}

const HEIGHT = 26;
const MIDDLE = HEIGHT / 2;
const RING = 5;

/** The chance that a limit fails: a ring on its interval by sample, an upright tick by first order. */
export function ChanceStrip({ fails, firstOrder, worstFails, width }: Props) {
  const x = (chance: number): number => 8 + placeOf(chance) * (width - 16);
  const none = fails.value < LEAST;
  return (
    <svg className="chance-strip" width={width} height={HEIGHT} aria-hidden="true" focusable="false">
      <line className="chance-slot" x1="8" x2={width - 8} y1={MIDDLE} y2={MIDDLE} />
      {TICKS.map(([chance]) => (
        <line
          key={chance}
          className="chance-slot"
          x1={x(chance)}
          x2={x(chance)}
          y1={MIDDLE - 3}
          y2={MIDDLE + 3}
        />
      ))}
      {!none && (
        <line className="chance-interval" x1={x(fails.low)} x2={x(fails.high)} y1={MIDDLE} y2={MIDDLE} />
      )}
      {none ? (
        <path className="chance-open" d={`M12 ${MIDDLE - 5} L4 ${MIDDLE} L12 ${MIDDLE + 5}`} />
      ) : (
        <circle className="chance-ring" cx={x(fails.value)} cy={MIDDLE} r={RING} />
      )}
      {firstOrder !== null && firstOrder >= LEAST && (
        <line className="chance-first" x1={x(firstOrder)} x2={x(firstOrder)} y1={2} y2={HEIGHT - 2} />
      )}
      {!worstFails && none && <line className="chance-jaw" x1="3" x2="3" y1={MIDDLE - 9} y2={MIDDLE + 9} />}
    </svg>
  );
}

const LABELS = 18;

/** About how wide a letter is, px. */
const LETTER = 5.5;

/** The words that stand clear of one another, the ends first. */
function fitting(x: (chance: number) => number): typeof TICKS {
  const taken: (readonly [from: number, to: number])[] = [];
  return [0, 4, 2, 3, 1].flatMap((i) => {
    const tick = TICKS[i];
    if (tick === undefined) return [];
    const [chance, word] = tick;
    const wide = word.length * LETTER + 10;
    const from = i === 0 ? x(chance) : x(chance) - wide / 2;
    if (taken.some(([a, b]) => from < b && a < from + wide)) return [];
    taken.push([from, from + wide]);
    return [tick];
  });
}

/** The words along the picture's foot or head. */
export function ChanceAxis({ width }: { readonly width: number }) {
  const x = (chance: number): number => 8 + placeOf(chance) * (width - 16);
  const shown = fitting(x);
  return (
    <svg className="chance-axis" width={width} height={LABELS} aria-hidden="true" focusable="false">
      {shown.map(([chance, word]) => (
        <text key={chance} x={x(chance)} y="13" textAnchor={chance === LEAST ? 'start' : 'middle'}>
          {word}
        </text>
      ))}
    </svg>
  );
}
