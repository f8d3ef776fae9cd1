import { type Point, point } from '../point.ts';
import type { Outline } from '../scene.ts';
import { circle, hatch, polygon, polyline } from '../shapes.ts';
import type { Bench, Pictures } from './bench.ts';
import { length, level, type Picture } from './picture.ts';

const box = (x0: number, x1: number, half: number): Point[] => [
  point(x0, -half),
  point(x1, -half),
  point(x1, half),
  point(x0, half),
];

interface Layer {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly half: number;
}

/** What a foot's bolt clamps, from the backing plate inside (left) to the flange outside, cut through the bolt. */
function layers({ n }: Bench): Layer[] {
  const reach = 70;
  const sizes: readonly (readonly [name: string, size: number, half: number])[] = [
    ['plate_thickness', n('plate_thickness'), reach * 0.62],
    ['bed_thickness', n('bed_thickness'), reach * 0.62],
    ['transom_thickness', n('transom_thickness'), reach],
    ['foot_pad', n('foot_pad'), reach * 0.72],
    ['flange_thickness', n('flange_thickness'), reach * 0.72],
  ];
  let x = 0;
  return sizes.map(([name, size, half]) => {
    const from = x;
    x += Math.max(0, size);
    return { name, from, to: x, half };
  });
}

function drawn(bench: Bench): Outline[] {
  const stack = layers(bench);
  const d = bench.n('bolt_diameter');
  const end = stack.at(-1)?.to ?? 0;
  const shapes: Outline[] = stack
    .filter((it) => it.to > it.from)
    .flatMap(({ name, from, to, half }, i): Outline[] => {
      if (name === 'foot_pad') return [polygon('shim', box(from, to, half))];
      const role = name === 'transom_thickness' ? 'cut' : name === 'flange_thickness' ? 'choice' : 'outline';
      return [
        polygon(role, box(from, to, half)),
        ...(name === 'bed_thickness' ? [] : [hatch(box(from, to, half), i % 2 === 0)]),
      ];
    });
  return [
    ...shapes,
    polygon('fastener', box(-0.8 * d - 8, end, d / 2)),
    polygon('fastener', box(-0.8 * d, 0, 0.9 * d)),
    polygon('fastener', box(end, end + 0.65 * d, 0.9 * d)),
    polyline('axis', [point(-d * 2 - 10, 0), point(end + d * 2, 0)]),
  ];
}

const layer =
  (name: string) =>
  (bench: Bench): Picture => {
    const stack = layers(bench);
    const it = stack.find((other) => other.name === name);
    const end = stack.at(-1)?.to ?? 0;
    const [from, to, half] = [it?.from ?? 0, it?.to ?? 0, it?.half ?? 0];
    return {
      shapes: drawn(bench),
      measured: level(Math.max(half, 50) + 16, from, to, half),
      wide: Math.max(150, end * 2.6),
      about: point(end / 2, 34),
    };
  };

/** A piece of the transom's skin cut level, for its own thickness. */
function skin({ n }: Bench): Outline[] {
  const t = n('transom_thickness');
  const reach = t * 2.2;
  const inner = Math.min(t, Math.max(0, n('inner_skin')));
  const whole = box(-t, 0, reach);
  return [
    polygon('cut', whole),
    hatch(whole),
    ...(inner > 0 && inner < t / 2
      ? [
          polyline('fastener', [point(-t + inner, -reach), point(-t + inner, reach)]),
          polyline('fastener', [point(-inner, -reach), point(-inner, reach)]),
        ]
      : []),
  ];
}

/** What lies on the bolts, layer by layer, and the bolt itself. */
export const layerPictures: Pictures = {
  transom_thickness: (bench) => {
    const t = bench.n('transom_thickness');
    return {
      shapes: skin(bench),
      measured: level(t * 2.6, -t, 0, t * 2.2),
      wide: t * 8,
      about: point(-t / 2, t * 1.1),
    };
  },
  inner_skin: (bench) => {
    const [t, inner] = [bench.n('transom_thickness'), bench.n('inner_skin')];
    return {
      shapes: skin(bench),
      measured: level(t * 2.6, -t, -t + inner, t * 2.2),
      wide: Math.max(t * 5, inner * 6),
      about: point(-t * 0.7, t * 1.8),
    };
  },
  plate_thickness: layer('plate_thickness'),
  bed_thickness: layer('bed_thickness'),
  foot_pad: layer('foot_pad'),
  flange_thickness: layer('flange_thickness'),
  bolt_diameter: ({ n }) => {
    const d = n('bolt_diameter');
    return {
      shapes: [
        polygon('outline', box(0, d * 6, d / 2)),
        polygon('outline', box(-0.65 * d, 0, 0.9 * d)),
        polyline('axis', [point(-d * 1.4, 0), point(d * 6.6, 0)]),
      ],
      measured: length(point(d * 3.4, -d / 2), point(d * 3.4, d / 2)),
      wide: d * 8.4,
      about: point(d * 2.6, 0),
    };
  },
  plate_area: ({ n }) => {
    const side = Math.sqrt(Math.max(1, n('plate_area')));
    const half = side / 2;
    return {
      shapes: [
        polygon('outline', box(-half, half, half)),
        hatch(box(-half, half, half)),
        circle('outline', point(0, 0), n('bolt_diameter') / 2),
      ],
      measured: { kind: 'area', at: point(0, -side * 0.25) },
      wide: side * 2.2,
      about: point(0, 0),
    };
  },
};
