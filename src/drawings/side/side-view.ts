import { assemble, groundOf } from '../assemble.ts';
import { cropTo } from '../crop.ts';
import type { SceneOptions } from '../options.ts';
import { widened } from '../point.ts';
import type { Outline, Scene } from '../scene.ts';
import { boxOfShapes } from '../shapes.ts';
import type { Values } from '../values.ts';
import { chain } from './chain.ts';
import { sideHandles } from './handles.ts';
import { levelGaps } from './level-gaps.ts';
import { levels } from './levels.ts';
import { names } from './names.ts';
import { sideParts } from './side-parts.ts';
import { stackDimension } from './stack-dimension.ts';

/** What is shown when nothing can be drawn yet, mm. */
const EMPTY = { x0: -500, y0: -1200, x1: 500, y1: 1200 };

/** The mount seen from port, bow left: transom cut in the plane of the shaft, both rudders, brackets, shaft and drive. */
export function sideView(values: Values, options: SceneOptions): Scene {
  const ground = groundOf(values, options.profile);
  const { shapes, labels } = assemble(sideParts, values, options);
  const box = boxOfShapes(shapes) ?? EMPTY;
  const water: Outline = { kind: 'water', role: 'water', level: 0 };
  const scene: Scene = {
    kind: 'side',
    title: 'The mount from the side, bow to the left, to scale',
    box: widened(box, 12),
    shapes: [
      water,
      ...shapes,
      ...chain(values, options, ground.shaft),
      ...levelGaps(values, options, ground),
      ...stackDimension(values, options, ground),
      ...levels(values, options),
      ...names(shapes),
      ...labels,
    ],
    handles: sideHandles(values, ground),
    rule: options.unit === 'in' ? 'in' : 'mm',
    cropped: false,
  };
  return options.part === undefined ? scene : cropTo(scene, options.part);
}
