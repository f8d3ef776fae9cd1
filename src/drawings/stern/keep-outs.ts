import type { KeepOut } from '../options.ts';
import { point } from '../point.ts';
import type { Label, Outline } from '../scene.ts';
import { hatch, polygon } from '../shapes.ts';

const corners = ([a, b, c, d]: KeepOut['edges']) => {
  const [port, starboard, lower, upper] = [Math.min(a, b), Math.max(a, b), Math.min(c, d), Math.max(c, d)];
  return [point(port, lower), point(starboard, lower), point(starboard, upper), point(port, upper)];
};

/** What holes and flanges must keep clear of: hatched on the face, dashed behind it. */
export const keepOutShapes = (keepOuts: readonly KeepOut[]): Outline[] =>
  keepOuts.flatMap(({ edges, inside }) => {
    const points = corners(edges);
    return inside ? [polygon('hidden', points)] : [polygon('outline', points), hatch(points)];
  });

/** What each is called, where the owner has given it a name. */
export const keepOutLabels = (keepOuts: readonly KeepOut[]): Label[] =>
  keepOuts.flatMap(({ edges: [a, b, c, d], label, inside }) =>
    label === ''
      ? []
      : [
          {
            kind: 'label',
            role: 'name',
            lines: [inside ? `${label}, inside` : label],
            at: point((a + b) / 2, (c + d) / 2),
          } as const,
        ],
  );
