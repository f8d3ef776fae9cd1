import { boxOf, point } from '../point.ts';
import type { Label, Outline } from '../scene.ts';

const named: readonly (readonly [part: string, kinds: readonly string[], lines: readonly string[]])[] = [
  ['rudder_overhang', ['soft-fill'], ["The boat's", 'own rudder']],
  ['vane_rudder_span', ['outline'], ['Auxiliary', 'rudder']],
];

/** Names lettered inside the parts that have room for them. */
export function names(shapes: readonly Outline[]): Label[] {
  const labels: Label[] = [];
  for (const [part, roles, lines] of named) {
    const shape = shapes.find((it) => it.kind === 'polygon' && it.part === part && roles.includes(it.role));
    const inside = shape?.kind === 'polygon' ? boxOf(shape.points) : null;
    if (inside === null) continue;
    const at = point((inside.x0 + inside.x1) / 2, (inside.y0 + inside.y1) / 2);
    labels.push({ kind: 'label', role: 'name', lines, at, inside, part });
  }
  const drive = shapes.find(
    (it) => it.kind === 'polygon' && it.part === 'drive_overlap' && it.role === 'soft-fill',
  );
  const body = drive?.kind === 'polygon' ? boxOf(drive.points) : null;
  if (body !== null) {
    const at = point(body.x1, body.y0 + (body.y1 - body.y0) * 0.7);
    labels.push({ kind: 'label', role: 'name', lines: ['Drive unit'], at, part: 'drive_overlap' });
  }
  return labels;
}
