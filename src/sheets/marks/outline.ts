/** A piece of an outline, mm from the page's top left, y down. */
export type Segment =
  | readonly ['M', x: number, y: number]
  | readonly ['L', x: number, y: number]
  | readonly ['C', x1: number, y1: number, x2: number, y2: number, x: number, y: number]
  | readonly ['Z'];

export type Outline = readonly Segment[];

export type Place = readonly [x: number, y: number];

export const straight = (points: readonly Place[], closed = false): Outline => [
  ...points.map(([x, y], i): Segment => [i === 0 ? 'M' : 'L', x, y]),
  ...(closed ? [['Z'] as const] : []),
];

export const rectangle = (x: number, y: number, width: number, height: number): Outline =>
  straight(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    true,
  );

/** Part of a circle from one angle to another, radians clockwise on the page, as cubic curves of a quarter at most. */
export function bow(x: number, y: number, r: number, from: number, to: number): Segment[] {
  const steps = Math.max(1, Math.ceil(Math.abs(to - from) / (Math.PI / 2) - 1e-9));
  const step = (to - from) / steps;
  // The usual control length of a cubic that follows a circle.
  const k = (4 / 3) * Math.tan(step / 4) * r;
  return Array.from({ length: steps }, (_, i): Segment => {
    const [a, b] = [from + i * step, from + (i + 1) * step];
    const [ax, ay, bx, by] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
    return [
      'C',
      x + r * ax - k * ay,
      y + r * ay + k * ax,
      x + r * bx + k * by,
      y + r * by - k * bx,
      x + r * bx,
      y + r * by,
    ];
  });
}

export const circle = (x: number, y: number, r: number): Outline => [
  ['M', x + r, y],
  ...bow(x, y, r, 0, 2 * Math.PI),
  ['Z'],
];
