import type { MeasuredProfile } from '../../drawings/face.ts';
import { point, widened } from '../../drawings/point.ts';
import type { Outline, Scene, Shape } from '../../drawings/scene.ts';
import { boxOfShapes, isDrawn, polyline } from '../../drawings/shapes.ts';
import { sideView } from '../../drawings/side/side-view.ts';
import type { Values } from '../../drawings/values.ts';
import { marked } from '../../order/marked.ts';
import type { Units } from '../../plan/plan.ts';

/** What is not bolted to the transom needs no place on a drawing to mark by. */
const NOT_MARKED = new Set(['rudder_overhang', 'vane_rudder_span', 'drive_overlap']);

const kept = (shape: Shape): boolean =>
  // The shaft's axis runs on past everything that is marked.
  (isDrawn(shape) && shape.role !== 'axis' && !NOT_MARKED.has(shape.part ?? '')) ||
  shape.kind === 'level' ||
  (shape.kind === 'label' && shape.role === 'reason');

/** Heights in inches as everything on the sheet that is marked: to the tape's 32nds. */
function onTape(shape: Shape, units: Units): Shape {
  if (shape.kind !== 'level' || units === 'mm') return shape;
  const inches = `${marked(shape.height).inches} in`;
  return { ...shape, figure: units === 'in' ? { first: inches } : { ...shape.figure, second: inches } };
}

/** From the side: the heights at which brackets and feet are marked, on the face as measured where it is followed. */
export function sideMarking(values: Values, units: Units, profile: MeasuredProfile = []): Scene {
  const scene = sideView(values, { unit: units, ...(profile.length === 0 ? {} : { profile }) });
  const shapes = scene.shapes.filter(kept).map((it) => onTape(it, units));
  const box = boxOfShapes(shapes.filter((it): it is Outline => isDrawn(it))) ?? scene.box;
  return {
    ...scene,
    title: 'The mount from the side, bow to the left, with the heights to mark',
    handles: [],
    shapes: [...shapes, polyline('waterline', [point(box.x0, 0), point(box.x1, 0)])],
    box: widened(box, 12),
  };
}
