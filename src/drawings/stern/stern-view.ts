import { assemble } from '../assemble.ts';
import { cropTo } from '../crop.ts';
import { sidesInUse } from '../feet.ts';
import type { SceneOptions } from '../options.ts';
import type { Part } from '../part.ts';
import { point, widened } from '../point.ts';
import type { Handle, Outline, Scene } from '../scene.ts';
import { boxOfShapes, polyline } from '../shapes.ts';
import { levels } from '../side/levels.ts';
import { need, type Values } from '../values.ts';
import { edgeDimensions } from './edge-dimensions.ts';
import { sternStruts } from './feet.ts';
import { heeledWaterline, lowestHoleDimension } from './heeled.ts';
import { keepOutLabels, keepOutShapes } from './keep-outs.ts';
import { lowerFlange } from './lower-flange.ts';
import { offsets } from './offsets.ts';
import { clampsFromAstern, tubeFromAstern } from './shaft-from-astern.ts';
import { transomOutline } from './transom-outline.ts';

const sternParts: readonly Part[] = [
  transomOutline,
  lowerFlange,
  tubeFromAstern,
  ...clampsFromAstern,
  ...sternStruts,
];

const EMPTY = { x0: -600, y0: -300, x1: 600, y1: 1200 };

function centreline(values: Values): Outline[] {
  const got = need(values, 'transom_top', 'transom_bottom');
  return got === null ? [] : [polyline('axis', [point(0, got[1] - 60), point(0, got[0] + 60)])];
}

function handles(values: Values): Handle[] {
  const found: Handle[] = [];
  for (const side of sidesInUse(values)) {
    const got = need(values, `${side}_foot_y`, `${side}_foot_height`);
    if (got !== null)
      found.push({ name: `${side}_foot_y`, at: point(got[0], got[1]), moves: 'athwartships' });
  }
  const shaft = need(values, 'shaft_offset', 'lower_bracket_height');
  if (shaft !== null)
    found.push({ name: 'shaft_offset', at: point(shaft[0], shaft[1]), moves: 'athwartships' });
  return found;
}

/** The transom from astern, looking forward, port to the left: what is bolted to it and how near to its edges. */
export function sternView(values: Values, options: SceneOptions): Scene {
  const { shapes, labels } = assemble(sternParts, values, options);
  const water: Outline = { kind: 'water', role: 'water', level: 0 };
  const keepOuts = options.keepOuts ?? [];
  const drawn = [...shapes, ...keepOutShapes(keepOuts), ...heeledWaterline(values), ...centreline(values)];
  const scene: Scene = {
    kind: 'stern',
    title: 'The transom from astern, port to the left, to scale',
    box: widened(boxOfShapes(drawn) ?? EMPTY, 12),
    shapes: [
      water,
      ...drawn,
      ...offsets(values, options),
      ...edgeDimensions(values, options),
      ...lowestHoleDimension(values, options),
      ...levels(values, options),
      ...labels,
      ...keepOutLabels(keepOuts),
    ],
    handles: handles(values),
    rule: options.unit === 'in' ? 'in' : 'mm',
    cropped: false,
  };
  return options.part === undefined ? scene : cropTo(scene, options.part);
}
