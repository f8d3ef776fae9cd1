import { strutOf } from '../feet.ts';
import { judged, resultFigure } from '../measured.ts';
import type { SceneOptions } from '../options.ts';
import type { Ground } from '../part.ts';
import { minus, type Point, point } from '../point.ts';
import type { Angle } from '../scene.ts';
import { number, type Values } from '../values.ts';
import { captionOf } from '../words.ts';
import { seen } from './sheet.ts';

const degrees = (p: Point): number => (Math.atan2(p.y, p.x) * 180) / Math.PI;
/** Arms whose lines meet farther off than this, mm, are as good as parallel. */
const FARTHEST = 3000;

/** Where two lines through a and b along u and v meet; null when they are parallel. */
function meeting(a: Point, u: Point, b: Point, v: Point): Point | null {
  const cross = u.x * v.y - u.y * v.x;
  if (Math.abs(cross) < 1e-9) return null;
  const t = ((b.x - a.x) * v.y - (b.y - a.y) * v.x) / cross;
  return point(a.x + u.x * t, a.y + u.y * t);
}

/** The angle between the two arms, drawn where their lines meet. */
export function spread(values: Values, options: SceneOptions, { face, shaft }: Ground): Angle[] {
  if (number(values, 'strut_count') !== 2) return [];
  const port = strutOf(values, face, shaft, 'port');
  const starboard = strutOf(values, face, shaft, 'starboard');
  const figure = resultFigure(values, options, 'strut_spread', 'deg');
  if (port === null || starboard === null || figure === null) return [];
  const ends = [port, starboard].map((it) => ({
    pin: seen(it.pin.x, it.pin.y),
    foot: seen(it.footPin.x, it.footPin.y),
  }));
  const [a, b] = ends;
  if (a === undefined || b === undefined) return [];
  const at = meeting(a.foot, minus(a.foot, a.pin), b.foot, minus(b.foot, b.pin));
  if (at === null || Math.hypot(at.x - a.pin.x, at.y - a.pin.y) > FARTHEST) return [];
  const [u, v] = [minus(a.foot, at), minus(b.foot, at)];
  let [from, to] = [degrees(u), degrees(v)];
  if (from < 0) from += 360;
  if (to < 0) to += 360;
  if (from > to) [from, to] = [to, from];
  if (to - from > 180) [from, to] = [to, from + 360];
  const radius = Math.min(Math.hypot(u.x, u.y), Math.hypot(v.x, v.y)) * 0.62;
  const { state } = judged(options, 'strut_spread');
  const caption = captionOf('strut_spread');
  return [
    { kind: 'angle', role: 'dimension', name: 'strut_spread', caption, at, from, to, radius, figure, state },
  ];
}
