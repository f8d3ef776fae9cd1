interface Props {
  readonly room: number;
  readonly less: number;
  readonly more: number;
  readonly ends: readonly [number, number];
}

const WIDTH = 400;
const HEIGHT = 28;
const MIDDLE = HEIGHT / 2;
const SOLID = 10;

/**
 * How far one input moves the room: solid where it is more than was read, open where it is less. The ground beyond the
 * limit's bound is hatched; the overprint upright is the room as it is. The figures stand beside it.
 */
export function DriverBar({ room, less, more, ends: [low, high] }: Props) {
  const x = (value: number): number => ((value - low) / (high - low)) * WIDTH;
  const bound = x(0);
  const from = (a: number, b: number) => ({ x: Math.min(a, b), width: Math.abs(a - b) });
  return (
    <svg
      className="driver-bar"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
      focusable="false"
    >
      {bound > 0 && (
        <rect className="driver-past" x="0" y="0" width={Math.min(WIDTH, bound)} height={HEIGHT} />
      )}
      {bound > 0 && bound < WIDTH && (
        <line
          className="driver-jaw"
          x1={bound}
          x2={bound}
          y1="0"
          y2={HEIGHT}
          vectorEffect="non-scaling-stroke"
        />
      )}
      <rect
        className="driver-less"
        {...from(x(room), x(room + less))}
        y={MIDDLE - SOLID / 2}
        height={SOLID}
        vectorEffect="non-scaling-stroke"
      />
      <rect
        className="driver-more"
        {...from(x(room), x(room + more))}
        y={MIDDLE - SOLID / 2}
        height={SOLID}
      />
      <line
        className="driver-present"
        x1={x(room)}
        x2={x(room)}
        y1="0"
        y2={HEIGHT}
        vectorEffect="non-scaling-stroke"
      />
    </svg>
  );
}
