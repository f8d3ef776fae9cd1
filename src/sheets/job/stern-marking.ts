import { point } from '../../drawings/point.ts';
import type { Outline, Scene, Shape } from '../../drawings/scene.ts';
import { boxOfShapes, circle, polygon, polyline, slab } from '../../drawings/shapes.ts';
import { keepOutShapes } from '../../drawings/stern/keep-outs.ts';
import { sternView } from '../../drawings/stern/stern-view.ts';
import type { Values } from '../../drawings/values.ts';
import type { Ask } from '../../order/ask.ts';
import { flangeOf } from '../../order/bolt-pattern.ts';
import type { Hole } from '../../order/holes.ts';
import type { KeepOut } from '../../order/keep-outs-of.ts';

/** Distance of a hole to starboard of the centreline, mm. */
export const across = (hole: Hole): number => (hole.side === 'to port' ? -1 : 1) * hole.across.exact;

const byPlace = (holes: readonly Hole[]): readonly (readonly Hole[])[] =>
  [...new Set(holes.map((it) => it.place))].map((place) => holes.filter((it) => it.place === place));

interface Flanged {
  readonly holes: readonly Hole[];
  readonly y: number;
  readonly z: number;
  readonly width: number;
  readonly height: number;
}

function flanged(ask: Ask, holes: readonly Hole[]): Flanged[] {
  return byPlace(holes).flatMap((its) => {
    const place = its[0]?.place;
    const flange = place === undefined ? { missing: [] } : flangeOf(ask, place);
    if ('missing' in flange) return [];
    const mean = (of: (hole: Hole) => number): number =>
      its.reduce((sum, it) => sum + of(it), 0) / its.length;
    return [
      {
        holes: its,
        y: mean(across),
        z: mean((it) => it.height.exact),
        width: flange.width,
        height: flange.height,
      },
    ];
  });
}

/** The flange with its holes and their centre lines. */
function outlines({ holes, y, z, width, height }: Flanged, diameter: number): Outline[] {
  const [right, up] = [
    { x: 1, y: 0 },
    { x: 0, y: 1 },
  ];
  const reach = diameter / 2 + 10;
  return [
    polygon('choice', slab(point(y, z), right, width / 2, up, height / 2)),
    ...holes.flatMap((hole) => {
      const at = point(across(hole), hole.height.exact);
      return [
        circle('fastener', at, diameter / 2),
        polyline('axis', [point(at.x - reach, at.y), point(at.x + reach, at.y)]),
        polyline('axis', [point(at.x, at.y - reach), point(at.x, at.y + reach)]),
      ];
    }),
  ];
}

/** From astern: the transom with every hole to drill, and what they keep clear of. */
export function sternMarking(
  values: Values,
  ask: Ask,
  holes: readonly Hole[],
  keepOuts: readonly KeepOut[] = [],
): Scene {
  const scene = sternView(values, { unit: 'mm' });
  const transom = scene.shapes.filter(
    (it): it is Outline => it.kind === 'polygon' && it.part === 'transom_rake',
  );
  const flanges = flanged(ask, holes);
  const drawn = [
    ...transom,
    ...keepOutShapes(keepOuts),
    ...flanges.flatMap((it) => outlines(it, values.number('bolt_diameter') ?? 0)),
  ];
  const box = boxOfShapes(drawn) ?? scene.box;
  const shapes: Shape[] = [
    { kind: 'water', role: 'water', level: 0 },
    ...drawn,
    polyline('axis', [point(0, Math.min(box.y0, 0) - 20), point(0, box.y1 + 20)]),
  ];
  return {
    kind: 'stern',
    title: 'The transom from astern, port to the left, with the holes to drill',
    box: { x0: box.x0 - 12, y0: Math.min(box.y0, 0) - 20, x1: box.x1 + 12, y1: box.y1 + 20 },
    shapes,
    handles: [],
    rule: null,
    cropped: false,
  };
}
