import { partOf } from './parts.ts';
import { type Box, boxOf, type Point, point, widened } from './point.ts';
import type { Outline, Scene, Shape } from './scene.ts';
import { boxOfShapes } from './shapes.ts';

function isOutline(shape: Shape): shape is Outline {
  return (
    shape.kind !== 'label' && shape.kind !== 'level' && shape.kind !== 'dimension' && shape.kind !== 'angle'
  );
}

const within = (box: Box, p: Point): boolean =>
  p.x >= box.x0 && p.x <= box.x1 && p.y >= box.y0 && p.y <= box.y1;

/** Room left round the part, as a share of its larger side, and the least of it, mm. */
const ROUND = 0.35;
const LEAST = 60;

function corners(box: Box | null): Point[] {
  return box === null ? [] : [point(box.x0, box.y0), point(box.x1, box.y1)];
}

/** Whether lettering belongs to what the window shows. */
function seen(shape: Shape, box: Box): boolean {
  if (shape.kind === 'dimension') return within(box, shape.from) && within(box, shape.to);
  if (shape.kind === 'angle' || shape.kind === 'label') return within(box, shape.at);
  if (shape.kind === 'level') return shape.height >= box.y0 && shape.height <= box.y1;
  return true;
}

/** The same scene through a window on what belongs to one input; the whole scene when nothing does. */
export function cropTo(scene: Scene, name: string): Scene {
  const part = partOf(name);
  const drawn = scene.shapes
    .filter(isOutline)
    .filter((shape) => shape.part === part && shape.role !== 'axis');
  const measured = scene.shapes.flatMap((shape) =>
    shape.kind === 'dimension' && (shape.name === name || shape.name === part) ? [shape.from, shape.to] : [],
  );
  const box = boxOf([...corners(boxOfShapes(drawn)), ...measured]);
  if (box === null) return scene;
  const margin = Math.max(LEAST, ROUND * Math.max(box.x1 - box.x0, box.y1 - box.y0));
  return windowOn(scene, widened(box, margin));
}

/** The scene through a window of its own choice. */
export function windowOn(scene: Scene, box: Box): Scene {
  return {
    ...scene,
    box,
    cropped: true,
    shapes: scene.shapes.filter((shape) => seen(shape, box)),
    handles: scene.handles.filter((handle) => within(box, handle.at)),
  };
}
