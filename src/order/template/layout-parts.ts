import type { Units } from '../../plan/plan.ts';
import { type Drill, drillOf, drillWords } from '../drill.ts';
import { type Hole, holesOf } from '../holes.ts';
import type { OrderGiven } from '../section.ts';
import { tapeWords } from '../words.ts';
import { cross, type Spot, type TemplatePart } from './part.ts';

/** How far past the outermost hole the lines of a layout run, mm. */
const PAST = 30;

/** A hole's place on the face laid flat: along it from the centreline, up it from the waterline mark. */
const spotOf = ({ side, acrossFace, upFace }: Hole): Spot => ({
  x: side === 'to port' ? -acrossFace.exact : acrossFace.exact,
  y: upFace.exact,
});

/** Holes so near one height that one line serves both. */
const isLevelWith = (a: Hole, b: Hole): boolean => Math.abs(a.upFace.exact - b.upFace.exact) < 0.001;

function layout(id: string, title: string, holes: readonly Hole[], drill: Drill, units: Units): TemplatePart {
  const diameter = drill.hole;
  const spots = holes.map(spotOf);
  const [xs, ys] = [spots.map((it) => it.x), spots.map((it) => it.y)];
  // The centreline is always on it, or there would be nothing to lay it to.
  const [left, right] = [Math.min(0, ...xs) - PAST, Math.max(0, ...xs) + PAST];
  const [low, high] = [Math.min(...ys) - PAST, Math.max(...ys) + PAST];
  const levels = holes.filter((it, i) => holes.findIndex((other) => isLevelWith(other, it)) === i);
  return {
    id,
    title,
    says: `Lay its centreline on the boat’s, and its level lines at the heights lettered, up the face from the waterline mark. Where paper and tape differ, the tape is right. Drill ${drillWords(drill)}.`,
    count: 0,
    outlines: [],
    holes: spots.map((it) => ({ ...it, diameter })),
    lines: [
      [
        { x: 0, y: low },
        { x: 0, y: high },
      ],
      ...levels.map(
        ({ upFace }) =>
          [
            { x: left, y: upFace.exact },
            { x: right, y: upFace.exact },
          ] as const,
      ),
      ...spots.flatMap((it) => cross(it, diameter)),
    ],
    words: [
      { x: 2, y: high - 5, text: 'centreline' },
      ...levels.map(({ upFace }) => ({
        x: 2,
        y: upFace.exact - 7,
        text: `${tapeWords(upFace, units)} up the face`,
      })),
      ...holes.map((it) => {
        const { x, y } = spotOf(it);
        return { x: x + diameter, y: y - 7, text: `${it.number}: ${tapeWords(it.acrossFace, units)}` };
      }),
    ],
  };
}

/** Where the holes lie on the transom's face: the lower bracket's, and the feet's. */
export function layoutParts({ ask, units, profile }: OrderGiven): readonly (TemplatePart | string)[] {
  const { holes, unanswered } = holesOf(ask, units, profile);
  const drill = drillOf(ask);
  if (drill === undefined) return unanswered;
  const [lower, feet] = [
    holes.filter((it) => it.place === 'lower'),
    holes.filter((it) => it.place !== 'lower'),
  ];
  return [
    ...(lower.length > 0 ? [layout('holes-lower', 'Holes of the lower bracket', lower, drill, units)] : []),
    ...(feet.length > 0 ? [layout('holes-feet', 'Holes of the feet', feet, drill, units)] : []),
    ...unanswered,
  ];
}
