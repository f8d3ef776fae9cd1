import type { Mapped } from '../../studies/map/map.ts';
import type { NamedPlace } from './map-ask.ts';
import type { MapBox } from './map-box.ts';
import { meet, type Taken } from './region-letters.ts';

/** A point marked on the map, with its lettering's place. */
export interface Mark {
  readonly kind: 'now' | 'scenario' | 'widest';
  readonly text: string;
  /** The point, px. */
  readonly x: number;
  readonly y: number;
  /** Where the lettering begins or ends; a scenario has none where there is no room for it. */
  readonly letter?: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'middle' | 'end' };
}

const RADIUS = { now: 7, scenario: 6, widest: 10 } as const;
const LONGEST = 22;

const shortened = (name: string): string =>
  name.length > LONGEST ? `${name.slice(0, LONGEST - 1).trimEnd()}…` : name;

interface Point {
  readonly kind: Mark['kind'];
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

function pointsOf(
  mapped: Mapped,
  present: { readonly x: number; readonly y: number } | undefined,
  scenarios: readonly NamedPlace[],
): Point[] {
  const { widest } = mapped;
  const points: Point[] = [];
  if (present !== undefined) points.push({ kind: 'now', text: 'now', ...present });
  if (widest !== undefined) {
    points.push({ kind: 'widest', text: widest.room < 0 ? 'nearest' : 'widest', x: widest.x, y: widest.y });
  }
  // Scenarios at one place share a cross and its lettering.
  for (const { name, x, y } of scenarios) {
    const at = points.findIndex((it) => it.kind === 'scenario' && it.x === x && it.y === y);
    const there = points[at];
    if (there === undefined) points.push({ kind: 'scenario', text: shortened(name), x, y });
    else points[at] = { ...there, text: `${there.text}, ${shortened(name)}` };
  }
  return points;
}

const around = ({ x, y, kind }: Point): Taken => ({
  x,
  y,
  width: RADIUS[kind] * 2,
  height: RADIUS[kind] * 2,
});

/**
 * The points marked on a map and the places of their lettering: beside, above or below each, wherever it meets least of
 * the others and stays inside. `letter` is the height of a letter, px.
 */
export function marksOf(
  mapped: Mapped,
  present: { readonly x: number; readonly y: number } | undefined,
  scenarios: readonly NamedPlace[],
  box: MapBox,
  letter: number,
): { readonly marks: readonly Mark[]; readonly taken: readonly Taken[] } {
  const inside = ({ x, y }: Taken): boolean =>
    x >= box.left - 1 && x <= box.right + 1 && y >= box.top - 1 && y <= box.bottom + 1;
  const points = pointsOf(mapped, present, scenarios)
    .map((it) => ({ ...it, x: box.x(it.x), y: box.y(it.y) }))
    .filter((it) => inside(around(it)));
  const taken: Taken[] = points.map(around);
  const marks = points.map((point): Mark => {
    const radius = RADIUS[point.kind] + 4;
    const [width, height] = [point.text.length * letter * 0.52, letter];
    const beside = (sign: 1 | -1): Taken => ({
      x: point.x + sign * (radius + width / 2),
      y: point.y,
      width,
      height,
    });
    const over = (sign: 1 | -1): Taken => ({
      x: Math.min(box.right - width / 2 - 2, Math.max(box.left + width / 2 + 2, point.x)),
      y: point.y + sign * (radius + height / 2),
      width,
      height,
    });
    const places = [beside(1), beside(-1), over(-1), over(1)];
    const costs = places.map((it) => {
      const isOut =
        it.x - width / 2 < box.left || it.x + width / 2 > box.right || it.y < box.top || it.y > box.bottom;
      return taken.filter((other) => meet(it, other, 1)).length + (isOut ? 10 : 0);
    });
    const at = costs.indexOf(Math.min(...costs));
    if (point.kind === 'scenario' && (costs[at] ?? 0) > 0) return point;
    const place = places[at] as Taken;
    taken.push(place);
    const anchor = at === 0 ? 'start' : at === 1 ? 'end' : 'middle';
    const x = at === 0 ? point.x + radius : at === 1 ? point.x - radius : place.x;
    return { ...point, letter: { x, y: place.y, anchor } };
  });
  return { marks, taken };
}
