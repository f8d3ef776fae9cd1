import { boxOf, point } from '../point.ts';
import type { Scene } from '../scene.ts';
import type { Fit, FitInput } from './fit.ts';

/** A window stretched to the page's shape, so that it fills it. */
export function stretched(scene: Scene, fit: Fit, input: FitInput): Scene {
  if (!scene.cropped) return scene;
  const { box } = scene;
  const { page, padding } = input;
  const { scale } = fit.transform;
  const wide = Math.max(0, page.width - fit.columns.left - fit.columns.right) / scale / 2;
  const tall =
    Math.max(0, page.height - padding.top - padding.bottom - (box.y1 - box.y0) * scale) / scale / 2;
  return { ...scene, box: { x0: box.x0 - wide, y0: box.y0 - tall, x1: box.x1 + wide, y1: box.y1 + tall } };
}

/** A box with an extent, whatever the scene held. */
export function sound(scene: Scene): Scene {
  const corners = [point(scene.box.x0, scene.box.y0), point(scene.box.x1, scene.box.y1)];
  const box = boxOf(corners.filter((p) => Number.isFinite(p.x) && Number.isFinite(p.y))) ?? {
    x0: 0,
    y0: 0,
    x1: 0,
    y1: 0,
  };
  const least = 1;
  return {
    ...scene,
    box: { ...box, x1: Math.max(box.x1, box.x0 + least), y1: Math.max(box.y1, box.y0 + least) },
  };
}
