import type { Readings } from './ask.ts';

const rad = Math.PI / 180;

/** Room that a flange keeps from the edges of the face where the face has it, mm. Assumed. */
export const EDGE = 12;

/** Turns of the search for a foot's place to the side: on a curved face it moves its own pin. */
const TURNS = 6;

export interface Place {
  readonly y: number;
  readonly z: number;
}

/** A value within two ends; halfway between them where they have crossed. */
export const within = (value: number, low: number, high: number): number =>
  low > high ? (low + high) / 2 : Math.min(high, Math.max(low, value));

/** Forward reach of a curved face and the slope of its outward normal to the side, at a distance from the centreline. */
function curve(radius: number, y: number): { readonly forward: number; readonly slope: number } {
  if (radius === 0) return { forward: 0, slope: 0 };
  const depth = Math.sqrt(Math.max(1, radius * radius - y * y));
  return { forward: radius - depth, slope: y / depth };
}

/** Heights that a strut's foot may have on the face, with room for its flange. */
export function footHeight(
  wanted: number,
  { transom_top: top, transom_bottom: bottom, foot_height }: Readings,
): number {
  const half = foot_height / 2;
  const [low, high] = [bottom + half, top - half];
  const edge = Math.min(EDGE, Math.max(0, (high - low) / 2));
  return within(wanted, low + edge, high - edge);
}

/** The height on the face at which a foot's hinge pin is level with the clamp's, mm. */
export const levelHeight = (upper: number, { foot_standoff, transom_rake }: Readings): number =>
  upper + foot_standoff * Math.sin(transom_rake * rad);

/**
 * The starboard foot of two struts that spread by an angle, degrees, from a clamp whose pins are `pinX` aft of where the
 * face meets the water; the port foot mirrors it.
 */
export function footAside(angle: number, pinX: number, z: number, readings: Readings): number {
  const { transom_rake, transom_camber_radius: radius, pin_half_width, foot_standoff } = readings;
  const rake = Math.tan(transom_rake * rad);
  const open = Math.tan((angle / 2) * rad);
  const most = readings.transom_half_breadth - readings.foot_width / 2;
  const edge = Math.min(EDGE, Math.max(0, most / 2));
  let y = pin_half_width;
  for (let turn = 0; turn < TURNS; turn++) {
    const { forward, slope } = curve(radius, y);
    const size = Math.hypot(1, slope, rake);
    const footX = z * rake - forward + foot_standoff / size;
    y = within(pin_half_width + (pinX - footX) * open - (foot_standoff * slope) / size, 0, most - edge);
  }
  return y;
}
