import type { Units } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Mapped } from '../../studies/map/map.ts';
import { niceTicks, tickText } from '../parts/ticks.ts';
import type { MapBox } from './map-box.ts';

const MM_PER_INCH = 25.4;
const TICK = 5;

const sizeOf = (cell: InputCell, units: Units): number =>
  units === 'in' && cell.unit === 'mm' ? MM_PER_INCH : 1;

const unitWord = (cell: InputCell, units: Units): string => {
  if (cell.noun !== undefined) return cell.noun[1];
  if (cell.unit === '–') return '';
  if (cell.unit === 'deg') return 'degrees';
  return cell.unit === 'mm' && units === 'in' ? 'in' : cell.unit;
};

interface Props {
  readonly mapped: Mapped;
  readonly x: InputCell;
  readonly y: InputCell;
  readonly units: Units;
  readonly box: MapBox;
  /** Height of a letter, px. */
  readonly letter: number;
}

const ticksOf = (values: Float64Array, cell: InputCell, units: Units, count: number): readonly number[] => {
  const [low, high] = [values[0] as number, values.at(-1) as number];
  const whole = cell.type === 'whole';
  return niceTicks(low, high, Math.max(2, count), { whole, of: sizeOf(cell, units) }).filter(
    (it) => it >= low - 1e-9 && it <= high + 1e-9,
  );
};

/** The two axes: ink lines with ticks inward, round figures, and what they count. */
export function MapAxes({ mapped, x, y, units, box, letter }: Props) {
  const { left, right, top, bottom } = box;
  const across = ticksOf(mapped.xs, x, units, Math.floor((right - left) / (letter * 6)));
  const up = ticksOf(mapped.ys, y, units, Math.floor((bottom - top) / (letter * 4)));
  const below = bottom + letter * 1.25;
  return (
    <g>
      <path className="map-axis" d={`M${left} ${top}V${bottom}H${right}`} />
      {across.map((value) => (
        <g key={value}>
          <path className="map-axis" d={`M${box.x(value)} ${bottom}v${-TICK}`} />
          <text
            className="map-tick"
            x={Math.min(box.x(value), right)}
            y={below}
            textAnchor={box.x(value) > right - letter ? 'end' : 'middle'}
          >
            {tickText(value, sizeOf(x, units))}
          </text>
        </g>
      ))}
      {up.map((value) => (
        <g key={value}>
          <path className="map-axis" d={`M${left} ${box.y(value)}h${TICK}`} />
          <text className="map-tick" x={left - 6} y={box.y(value)} dy="0.35em" textAnchor="end">
            {tickText(value, sizeOf(y, units))}
          </text>
        </g>
      ))}
      <text className="map-tick" x={right} y={below + letter * 1.1} textAnchor="end">
        {unitWord(x, units)}
      </text>
      <text className="map-tick" x={left - 6} y={top - letter * 1.05} textAnchor="end">
        {unitWord(y, units)}
      </text>
    </g>
  );
}
