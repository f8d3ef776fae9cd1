import { point } from '../point.ts';
import { type Bench, water } from '../reading/bench.ts';
import type { Scene } from '../scene.ts';
import { hatch, polygon, polyline } from '../shapes.ts';
import { asked, surveyScene } from './survey-scene.ts';

/** The transom from astern with one thing that must not be drilled, and the four readings that place it. */
export function keepOuts({ n, stern }: Bench): Scene {
  const [top, bottom, half] = [n('transom_top'), n('transom_bottom'), n('transom_half_breadth')];
  const [port, starboard] = [half * 0.3, half * 0.62];
  const [lower, upper] = [bottom + (top - bottom) * 0.45, bottom + (top - bottom) * 0.68];
  const one = [point(port, lower), point(starboard, lower), point(starboard, upper), point(port, upper)];
  const across = (name: string, y: number, over: number) =>
    asked(name, name, point(0, top + over), point(y, top + over), [point(0, top), point(y, upper)]);
  const up = (name: string, z: number, aside: number) =>
    asked(name, name, point(half + aside, 0), point(half + aside, z), [point(half, 0), point(starboard, z)]);
  const box = { x0: -half - 60, y0: -40, x1: half + 1080, y1: top + 350 };
  const shapes = [
    water,
    ...stern('transom_rake'),
    polyline('axis', [point(0, bottom - 100), point(0, top + 340)]),
    polygon('outline', one),
    hatch(one),
    across('port edge', port, 280),
    across('starboard edge', starboard, 130),
    up('lower edge', lower, 90),
    up('upper edge', upper, 560),
  ];
  return surveyScene('Something on the transom, and the four readings that place it', shapes, box);
}
