import type { FittedRow } from '../../session/survey/fitted-rows.ts';
import { formatLength } from '../../units/format-length.ts';
import { bareUnit } from '../parts/length-style.ts';
import { useUnits } from '../parts/use-units.ts';

interface Props {
  readonly fit: { readonly rows: readonly FittedRow[]; readonly at: (height: number) => number };
  readonly label: string;
}

const [WIDE, HIGH, EDGE] = [400, 240, 20];
/** The left part is to scale; the right one holds the distances off the line, enlarged. */
const [LEFT, RIGHT] = [
  { from: 30, to: 170 },
  { middle: 300, half: 70 },
];
const TIMES = [1, 2, 5, 10, 20, 50, 100] as const;

/** The line through the readings, and each reading's distance off it, enlarged. */
export function FitPicture({ fit, label }: Props) {
  const bare = bareUnit(useUnits());
  const { rows } = fit;
  const heights = rows.map((row) => row.height);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const reach = Math.max(...rows.flatMap((row) => [row.distance, fit.at(row.height)]), 0);
  const near = Math.min(...rows.flatMap((row) => [row.distance, fit.at(row.height)]), 0);
  const scale = Math.min((HIGH - 2 * EDGE) / (high - low), (LEFT.to - LEFT.from) / Math.max(reach - near, 1));
  const y = (height: number): number => HIGH / 2 - (height - (low + high) / 2) * scale;
  // The plumb line hangs aft, so it stands at the right.
  const x = (distance: number): number => LEFT.to - (distance - near) * scale;
  const worst = Math.max(...rows.map((row) => Math.abs(row.off)));
  const times = TIMES.findLast((it) => worst * scale * it <= RIGHT.half) ?? 1;
  const aside = (off: number): number => RIGHT.middle - off * scale * times;
  const suspects = rows.filter((row) => row.suspicious).map((row) => row.at + 1);
  return (
    <figure className="survey-picture">
      <svg
        viewBox={`0 0 ${WIDE} ${HIGH}`}
        role="img"
        aria-label={`${label}: the straight line and the readings`}
      >
        <line className="survey-axis" x1={x(0)} x2={x(0)} y1={8} y2={HIGH - 8} />
        <line className="survey-line" x1={x(fit.at(low))} y1={y(low)} x2={x(fit.at(high))} y2={y(high)} />
        <line className="survey-axis" x1={RIGHT.middle} x2={RIGHT.middle} y1={8} y2={HIGH - 8} />
        {rows.map((row) => (
          <g key={row.at}>
            <circle className="survey-point" cx={x(row.distance)} cy={y(row.height)} r={3.5} />
            <line
              className="survey-off"
              x1={RIGHT.middle}
              x2={aside(row.off)}
              y1={y(row.height)}
              y2={y(row.height)}
            />
            {row.suspicious ? (
              <rect
                className="survey-bad"
                x={aside(row.off) - 5}
                y={y(row.height) - 5}
                width={10}
                height={10}
              />
            ) : (
              <circle className="survey-point" cx={aside(row.off)} cy={y(row.height)} r={3.5} />
            )}
            <text className="survey-tick" x={WIDE - 4} y={y(row.height) + 4} textAnchor="end">
              {row.at + 1}
            </text>
          </g>
        ))}
      </svg>
      <figcaption className="type-small base-soft">
        Left, the readings and the line through them, to scale, the plumb line dashed. Right, how far each row
        is off that line, {times === 1 ? 'at the same scale' : `${times} times larger`}; the worst by{' '}
        {formatLength(worst, { unit: bare, ...(bare === 'mm' ? { decimals: 1 } : {}) })}.{' '}
        {suspects.length > 0 && (
          <strong className="survey-suspect">
            {suspects.length === 1 ? 'Row' : 'Rows'} {suspects.join(' and ')}{' '}
            {suspects.length === 1 ? 'is' : 'are'} far outside the rest. Nothing is dropped: measure again,
            then change or take away.
          </strong>
        )}
      </figcaption>
    </figure>
  );
}
