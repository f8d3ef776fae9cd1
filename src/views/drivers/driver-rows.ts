import type { Driver, LimitDrivers } from '../../studies/drivers.ts';

/** Inputs drawn at most; the rest are counted. */
export const MOST_ROWS = 10;

/** One input's line: where the room goes when it is off by all it may be, to either side. */
export interface DriverRow {
  readonly input: string;
  readonly offBy: number;
  /** All rows of a survey table, whose change has no sign. */
  readonly table: boolean;
  readonly slope: Driver['slope'];
  /** Change of room with the input that much less and that much more. */
  readonly less: number;
  readonly more: number;
}

/** Part of the largest change below which an input is only counted. */
const TELLING = 0.03;

/** Rows worth drawing, the strongest first. */
export function tellingRows(rows: readonly DriverRow[]): readonly DriverRow[] {
  const most = Math.max(...rows.map(sizeOf));
  return rows.filter((it) => sizeOf(it) >= TELLING * most).slice(0, MOST_ROWS);
}

const sizeOf = ({ less, more }: DriverRow): number => Math.max(Math.abs(less), Math.abs(more));

export const driverRows = ({ drivers }: LimitDrivers): readonly DriverRow[] =>
  drivers.flatMap(({ input, offBy, table = false, slope, perOffBy }): DriverRow[] =>
    perOffBy === 0
      ? []
      : [
          {
            input,
            slope,
            offBy,
            table,
            less: -(slope.left ?? 0) * offBy,
            more: (slope.right ?? 0) * offBy,
          },
        ],
  );

/** Ends of the rooms drawn: all bars, the present room, and the bound where it is not far off. */
export function roomEnds(room: number, rows: readonly DriverRow[]): readonly [number, number] {
  const reach = Math.max(...rows.flatMap((it) => [Math.abs(it.less), Math.abs(it.more)]), 1e-12);
  const [low, high] = [room - 1.15 * reach, room + 1.15 * reach];
  // A bound further off than the longest bar is out of sight: the bars would shrink to nothing.
  return [
    low > 0 && low < 1.5 * reach ? -0.15 * reach : low,
    high < 0 && high > -1.5 * reach ? 0.15 * reach : high,
  ];
}
