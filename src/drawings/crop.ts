import { partOf } from './parts.ts';
import { type Box, boxOf, type Point, point, widened } from './point.ts';
import type { Scene, Shape } from './scene.ts';
import { boxOfShapes, isDrawn } from './shapes.ts';

const within = (box: Box, p: Point): boolean =>
  p.x >= box.x0 && p.x <= box.x1 && p.y >= box.y0 && p.y <= box.y1;

/** Parts that belong in the picture with another. */
const company: Readonly<Record<string, readonly string[]>> = {
  upper_bracket_height: ['port_foot_height', 'starboard_foot_height', 'single_foot_height'],
  port_foot_height: ['upper_bracket_height'],
  starboard_foot_height: ['upper_bracket_height'],
  single_foot_height: ['upper_bracket_height'],
  shim_count: ['lower_bracket_height'],
  wedge_edge: ['lower_bracket_height'],
};

/** Results that a part's own choices move directly; around another part every dimension in sight is kept. */
const concerned: Readonly<Record<string, readonly string[]>> = {
  upper_bracket_height: ['drive_headroom', 'bracket_spacing'],
  lower_bracket_height: ['bearing_gap', 'shim_stack', 'lower_bracket_edge', 'lowest_hole'],
  port_foot_height: ['port_foot_y', 'port_foot_edge', 'strut_spread'],
  starboard_foot_height: ['starboard_foot_y', 'starboard_foot_edge', 'strut_spread'],
  single_foot_height: ['single_foot_y', 'single_foot_edge'],
  shaft_foot_height: ['shaft_offset', 'bearing_gap', 'drive_headroom', 'shaft_face_gap', 'lowest_hole'],
  vane_rudder_span: ['rudder_gap', 'rudder_gap_swung', 'rudder_gap_vertical'],
  rudder_overhang: ['rudder_gap', 'rudder_gap_swung', 'rudder_gap_vertical'],
  drive_overlap: ['drive_headroom', 'drive_face_gap'],
  transom_rake: ['shaft_face_gap', 'drive_face_gap'],
  shim_count: ['shim_stack', 'shaft_face_gap'],
  wedge_edge: ['shim_stack', 'shaft_face_gap'],
};

/** Whether lettering speaks of the part that is looked at. */
function concerns(shape: Shape, name: string, part: string): boolean {
  if (shape.kind === 'level') return shape.name === name || partOf(shape.name) === part;
  if (shape.kind !== 'dimension' && shape.kind !== 'angle') return true;
  const names = concerned[part];
  return names === undefined || shape.name === name || names.includes(shape.name);
}

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
  const shown = new Set([part, ...(company[part] ?? [])]);
  const drawn = scene.shapes
    .filter(isDrawn)
    .filter((shape) => shape.part !== undefined && shown.has(shape.part) && shape.role !== 'axis');
  const measured = scene.shapes.flatMap((shape) =>
    shape.kind === 'dimension' && (shape.name === name || shape.name === part) ? [shape.from, shape.to] : [],
  );
  const box = boxOf([...corners(boxOfShapes(drawn)), ...measured]);
  if (box === null) return scene;
  const margin = Math.max(LEAST, ROUND * Math.max(box.x1 - box.x0, box.y1 - box.y0));
  const shapes = scene.shapes.filter((shape) => concerns(shape, name, part));
  return windowOn({ ...scene, shapes }, widened(box, margin));
}

/** The scene through a window of its own choice. */
function windowOn(scene: Scene, box: Box): Scene {
  return {
    ...scene,
    box,
    cropped: true,
    shapes: scene.shapes.filter((shape) => seen(shape, box)),
    handles: scene.handles.filter((handle) => within(box, handle.at)),
  };
}
