import { point } from '../point.ts';
import { type Bench, water } from '../reading/bench.ts';
import type { Scene } from '../scene.ts';
import { circle, polyline } from '../shapes.ts';
import { asked, note, surveyScene } from './survey-scene.ts';

/** How far the vane swings about the drive unit's head in this picture, mm. */
const SWEEP = 240;

/** Something above the deck near the gear: the heights of its ends, and how far fore and aft of the waterline mark. */
export function obstacles({ n, x, side, shaft }: Bench): Scene {
  const top = n('transom_top');
  const post = x(top) - 160;
  const [low, high] = [top + 40, top + 560];
  const head = shaft.at(n('shaft_top_height') + 330);
  const aside = post - 330;
  const over = high + 190;
  const up = (name: string, z: number, away: number) =>
    asked(name, name, point(aside - away, 0), point(aside - away, z), [
      point(aside - away, 0),
      point(post, z),
    ]);
  return surveyScene(
    'Something above the deck, near the gear',
    [
      water,
      ...side('transom_rake', 'drive_overlap'),
      polyline('axis', [shaft.at(0), head]),
      polyline('axis', [point(0, -60), point(0, over + 40)]),
      polyline('outline', [point(post, low), point(post, high)]),
      circle('hidden', head, SWEEP),
      up('lower end', low, 0),
      up('upper end', high, 600),
      asked('aft', 'aft, minus', point(post, over), point(0, over), [point(post, high), point(0, high)]),
      note(['what the vane sweeps'], point(head.x + SWEEP * 0.7, head.y - SWEEP * 0.7)),
    ],
    { x0: aside - 820, y0: -80, x1: head.x + SWEEP + 420, y1: over + 60 },
  );
}
