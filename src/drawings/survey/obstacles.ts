import { point } from '../point.ts';
import { type Bench, water } from '../reading/bench.ts';
import type { Scene } from '../scene.ts';
import { circle, polyline } from '../shapes.ts';
import { asked, note, surveyScene } from './survey-scene.ts';

/** How far the vane swings about the drive unit's head in this picture, mm. */
const SWEEP = 240;

/** Something above the deck near the gear: its height, and its distance fore and aft of the waterline mark. */
export function obstacles({ n, x, side, shaft }: Bench): Scene {
  const top = n('transom_top');
  const rail = point(x(top) - 260, top + 520);
  const head = shaft.at(n('shaft_top_height') + 330);
  const aside = rail.x - 420;
  const over = rail.y + 190;
  return surveyScene(
    'Something above the deck, near the gear',
    [
      water,
      ...side('transom_rake', 'drive_overlap'),
      polyline('axis', [shaft.at(0), head]),
      polyline('axis', [point(0, -60), point(0, over + 40)]),
      polyline('soft', [point(rail.x, top), rail, point(rail.x - 300, rail.y)]),
      circle('outline', rail, 14),
      circle('hidden', head, SWEEP),
      asked('height', 'height', point(aside, 0), point(aside, rail.y), [
        point(aside, 0),
        point(rail.x - 300, rail.y),
      ]),
      asked('distance', 'distance', point(rail.x, over), point(0, over), [rail, point(0, rail.y)]),
      note(['what the vane sweeps'], point(head.x + SWEEP * 0.7, head.y - SWEEP * 0.7)),
    ],
    { x0: aside - 200, y0: -80, x1: head.x + SWEEP + 420, y1: over + 60 },
  );
}
