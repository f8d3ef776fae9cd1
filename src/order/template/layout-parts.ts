import type { Profile } from '../../calc/transom/profile.ts';
import type { Ask } from '../ask.ts';
import { type Hole, holesOf } from '../holes.ts';
import { holeDiameter } from './flange-parts.ts';
import { cross, type Spot, type TemplatePart } from './part.ts';

/** How far past the outermost hole the lines of a layout run, mm. */
const PAST = 30;

/** A hole's place on the face laid flat: along it from the centreline, up it from the waterline mark. */
const spotOf = ({ side, acrossFace, upFace }: Hole): Spot => ({
  x: side === 'to port' ? -acrossFace.exact : acrossFace.exact,
  y: upFace.exact,
});

const millimetres = (value: number): string => `${Math.round(value * 10) / 10} mm`;

function layout(id: string, title: string, holes: readonly Hole[], diameter: number): TemplatePart {
  const spots = holes.map(spotOf);
  const [xs, ys] = [spots.map((it) => it.x), spots.map((it) => it.y)];
  // The centreline is always on it, or there would be nothing to lay it to.
  const [left, right] = [Math.min(0, ...xs) - PAST, Math.max(0, ...xs) + PAST];
  const [low, high] = [Math.min(...ys) - PAST, Math.max(...ys) + PAST];
  const levels = [...new Set(ys.map((y) => Math.round(y * 1000) / 1000))];
  return {
    id,
    title,
    says: 'Lay its centreline on the boat’s, and its level lines at the heights lettered, up the face from the waterline mark. Where paper and tape differ, the tape is right.',
    count: 0,
    outlines: [],
    holes: spots.map((it) => ({ ...it, diameter })),
    lines: [
      [
        { x: 0, y: low },
        { x: 0, y: high },
      ],
      ...levels.map(
        (y) =>
          [
            { x: left, y },
            { x: right, y },
          ] as const,
      ),
      ...spots.flatMap((it) => cross(it, diameter)),
    ],
    words: [
      { x: 2, y: high - 5, text: 'centreline' },
      ...levels.map((y) => ({ x: 2, y: y - 7, text: `${millimetres(y)} up the face` })),
      ...spots.map(({ x, y }) => ({ x: x + diameter, y: y - 7, text: millimetres(Math.abs(x)) })),
    ],
  };
}

/** Where the holes lie on the transom's face: the lower bracket's, and the feet's. */
export function layoutParts(ask: Ask, profile: Profile): readonly (TemplatePart | string)[] {
  const { holes, unanswered } = holesOf(ask, profile);
  const diameter = holeDiameter(ask);
  if (diameter === undefined) return unanswered;
  const [lower, feet] = [
    holes.filter((it) => it.place === 'lower'),
    holes.filter((it) => it.place !== 'lower'),
  ];
  return [
    ...(lower.length > 0 ? [layout('holes-lower', 'Holes of the lower bracket', lower, diameter)] : []),
    ...(feet.length > 0 ? [layout('holes-feet', 'Holes of the feet', feet, diameter)] : []),
    ...unanswered,
  ];
}
