import { camber } from '../../calc/transom/face-x.ts';
import { type Point, point } from '../point.ts';
import type { Scene } from '../scene.ts';
import { hatch, polygon, polyline } from '../shapes.ts';
import { asked, note, surveyScene } from './survey-scene.ts';

const RADIUS = 1500;
const HALF = 600;
const BATTEN = 480;
const SKIN = 30;
const STEPS = 24;

/**
 * A straightedge laid level across a curved transom, seen from above with the face towards the reader's foot: it
 * touches at the middle, and the gap is read at the same distance to either side.
 */
export function straightedge(): Scene {
  const outer: Point[] = [];
  for (let i = 0; i <= STEPS; i++) {
    const y = -HALF + (2 * HALF * i) / STEPS;
    outer.push(point(y, camber(y, RADIUS)));
  }
  const skin = [...outer, ...outer.toReversed().map((p) => point(p.x, p.y + SKIN))];
  const gap = camber(BATTEN, RADIUS);
  return surveyScene('A straightedge across the transom, from above', [
    polygon('cut', skin),
    hatch(skin),
    polygon('outline', [
      point(-BATTEN - 40, 0),
      point(BATTEN + 40, 0),
      point(BATTEN + 40, -34),
      point(-BATTEN - 40, -34),
    ]),
    polyline('axis', [point(0, 110), point(0, -190)]),
    asked('gap to port', 'gap', point(-BATTEN, 0), point(-BATTEN, gap)),
    asked('gap to starboard', 'gap', point(BATTEN, 0), point(BATTEN, gap)),
    asked('to port', 'out', point(-BATTEN, -110), point(0, -110), [point(-BATTEN, -34), point(0, -34)]),
    asked('to starboard', 'out', point(0, -110), point(BATTEN, -110), [point(0, -34), point(BATTEN, -34)]),
    note(['touches here'], point(0, 0)),
  ]);
}
