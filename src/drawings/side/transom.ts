import type { Face } from '../face.ts';
import { faceNeeds, type Part } from '../part.ts';
import { type Point, point } from '../point.ts';
import { breakLine, hatch, polygon, polyline } from '../shapes.ts';
import { need } from '../values.ts';

/** How much of deck and bottom is shown ahead of the transom, mm: a hint, not a reading. */
const STUB = 70;

const faceLine = (face: Face, bottom: number, top: number): Point[] => {
  const knots = face.profile.map(([z]) => z).filter((z) => z > bottom && z < top);
  const points: Point[] = [];
  for (const z of [bottom, ...knots, top]) {
    const x = face.x(z);
    if (x !== null) points.push(point(x, z));
  }
  return points;
};

/** The transom, cut along the plane of the shaft, with a stub of deck and bottom. */
export const transom: Part = {
  name: 'transom_rake',
  needs: [...faceNeeds, 'transom_top', 'transom_bottom', 'transom_thickness'],
  draw(values, { face }) {
    const got = need(values, 'transom_top', 'transom_bottom', 'transom_thickness');
    if (got === null || face === null) return [];
    const [top, bottom, thickness] = got;
    const outer = faceLine(face, bottom, top);
    const low = outer[0];
    const high = outer.at(-1);
    if (low === undefined || high === undefined || outer.length < 2) return [];
    const inner = outer.map(({ x, y }) => point(x - thickness / face.up(y).y, y));
    const skin = [...outer, ...inner.toReversed()];
    const stub = (from: Point, level: number): Point[] => [from, point(from.x - STUB, level)];
    const bottomLine = stub(point(low.x - thickness, low.y), low.y - STUB * 0.1);
    const deckLine = stub(point(high.x - thickness, high.y), high.y);
    return [
      polyline('soft', bottomLine, this.name),
      polyline('soft', deckLine, this.name),
      ...[bottomLine, deckLine].map(([, end]) =>
        breakLine(point(end?.x ?? 0, (end?.y ?? 0) - 22), point(end?.x ?? 0, (end?.y ?? 0) + 22), 8),
      ),
      polygon('cut', skin, this.name),
      hatch(skin),
    ];
  },
};
