import { assemble, groundOf } from '../assemble.ts';
import { cropTo } from '../crop.ts';
import { sidesInUse } from '../feet.ts';
import type { SceneOptions } from '../options.ts';
import type { Part } from '../part.ts';
import { point, widened } from '../point.ts';
import type { Handle, Label, Outline, Scene } from '../scene.ts';
import { boxOfShapes } from '../shapes.ts';
import { need, type Values } from '../values.ts';
import { arms } from './arms.ts';
import { clampFromAbove } from './clamp-from-above.ts';
import { auxiliaryBlade, ownBlade } from './rudder-blades.ts';
import { seen } from './sheet.ts';
import { spread } from './spread.ts';
import { swungGap } from './swung-gap.ts';
import { transomSection } from './transom-section.ts';

const planParts: readonly Part[] = [ownBlade, auxiliaryBlade, transomSection, ...arms, clampFromAbove];

const EMPTY = { x0: -500, y0: -400, x1: 500, y1: 400 };

function handles(values: Values, scene: { face: ReturnType<typeof groundOf>['face'] }): Handle[] {
  const found: Handle[] = [];
  for (const side of sidesInUse(values)) {
    const got = need(values, `${side}_foot_y`, `${side}_foot_height`);
    const x = got === null ? null : (scene.face?.x(got[1], got[0]) ?? null);
    if (got !== null && x !== null)
      found.push({ name: `${side}_foot_y`, at: seen(x, got[0]), moves: 'athwartships' });
  }
  return found;
}

function nameOf(shapes: readonly Outline[], part: string, lines: readonly string[]): Label[] {
  const found = shapes.find((it) => it.kind === 'arc' && it.part === part);
  if (found?.kind !== 'arc') return [];
  const at = point(found.at.x + found.radius * 0.7, found.at.y - found.radius * 0.25);
  return [{ kind: 'label', role: 'name', lines, at, part }];
}

/** The upper bracket from above, bow left and starboard at the bottom, with both rudders and what they sweep. */
export function planView(values: Values, options: SceneOptions): Scene {
  const ground = groundOf(values, options.profile);
  const { shapes, labels } = assemble(planParts, values, options);
  const scene: Scene = {
    kind: 'plan',
    title:
      'The upper bracket and both rudders from above, bow to the left, starboard at the bottom, to scale',
    box: widened(boxOfShapes(shapes) ?? EMPTY, 12),
    shapes: [
      ...shapes,
      ...spread(values, options, ground),
      ...swungGap(values, options, ground),
      ...nameOf(shapes, 'vane_rudder_span', ['Auxiliary rudder']),
      ...labels,
    ],
    handles: handles(values, ground),
    rule: null,
    cropped: false,
  };
  return options.part === undefined ? scene : cropTo(scene, options.part);
}
