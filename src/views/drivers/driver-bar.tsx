import { useId } from 'react';

/** Rooms from one end of the picture to the other, and how wide it is, px. */
export interface RoomScale {
  readonly low: number;
  readonly high: number;
  readonly width: number;
}

const placeOf = (value: number, { low, high, width }: RoomScale): number =>
  ((value - low) / (high - low)) * width;

interface Props {
  readonly room: number;
  readonly less: number;
  readonly more: number;
  readonly scale: RoomScale;
}

const THICK = 10;

/**
 * How far one input moves the room: solid where it is more than was read, open where it is less. The ground outside the
 * limit's bound is hatched; the overprint upright is the room as it is. The figures stand beside it.
 */
export function DriverBar({ room, less, more, scale }: Props) {
  const id = useId();
  const x = (value: number): number => placeOf(value, scale);
  const bound = x(0);
  const bar = (change: number) => ({
    x: Math.min(x(room), x(room + change)),
    width: Math.abs(x(room + change) - x(room)),
    y: '50%',
    height: THICK,
    transform: `translate(0 ${-THICK / 2})`,
  });
  return (
    <svg className="driver-bar" width={scale.width} height="100%" aria-hidden="true" focusable="false">
      <defs>
        <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className="driver-hatch" x1="0.5" y1="0" x2="0.5" y2="7" />
        </pattern>
      </defs>
      {bound > 0 && (
        <rect x="0" y="0" width={Math.min(scale.width, bound)} height="100%" fill={`url(#${id})`} />
      )}
      {bound > 0 && bound < scale.width && (
        <line className="driver-jaw" x1={bound} x2={bound} y1="0" y2="100%" />
      )}
      <line className="driver-present" x1={x(room)} x2={x(room)} y1="0" y2="100%" />
      <rect className="driver-less" {...bar(less)} />
      <rect className="driver-more" {...bar(more)} />
    </svg>
  );
}

interface HeadProps {
  readonly room: number;
  readonly scale: RoomScale;
  readonly now: string;
}

const HEIGHT = 36;
/** Nearest that the two words may stand, px. */
const APART = 64;

/** What the two uprights are: the room now, and the bound. */
export function DriverHead({ room, scale, now }: HeadProps) {
  const [here, bound] = [placeOf(room, scale), placeOf(0, scale)];
  const anchor = (at: number): 'start' | 'middle' | 'end' =>
    at < 44 ? 'start' : at > scale.width - 44 ? 'end' : 'middle';
  const isSeen = bound > 0 && bound < scale.width;
  const high = isSeen && Math.abs(here - bound) < APART;
  return (
    <svg className="driver-head" width={scale.width} height={HEIGHT} aria-hidden="true" focusable="false">
      <text className="driver-now" x={here} y={high ? 13 : 30} textAnchor={anchor(here)}>
        {now}
      </text>
      {isSeen && (
        <text x={bound} y="30" textAnchor={anchor(bound)}>
          bound
        </text>
      )}
    </svg>
  );
}
