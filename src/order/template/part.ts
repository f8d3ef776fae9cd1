/** A place on a template, mm: to starboard and up, seen from astern unless the part says otherwise. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface TemplateHole extends Spot {
  readonly diameter: number;
}

/** One thing to cut or to mark, at true size. */
export interface TemplatePart {
  /** Small letters and hyphens. */
  readonly id: string;
  readonly title: string;
  /** One sentence: how to use it. */
  readonly says: string;
  /** How many are made of it; 0 for what is only marked. */
  readonly count: number;
  /** What sheet or plate it is cut from; absent where there is none. */
  readonly thick?: string;
  /** Closed outlines to cut. */
  readonly outlines: readonly (readonly Spot[])[];
  readonly holes: readonly TemplateHole[];
  /** Lines to mark and not to cut. */
  readonly lines: readonly (readonly [Spot, Spot])[];
  readonly words: readonly (Spot & { readonly text: string })[];
}

/** What a part covers, mm. */
export interface Extent {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export function extentOf(part: TemplatePart): Extent {
  const spots = [
    ...part.outlines.flat(),
    ...part.lines.flat(),
    ...part.holes.flatMap(({ x, y, diameter }) => [
      { x: x - diameter / 2, y: y - diameter / 2 },
      { x: x + diameter / 2, y: y + diameter / 2 },
    ]),
  ];
  const [xs, ys] = [spots.map((it) => it.x), spots.map((it) => it.y)];
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}

/** A rectangle about its middle. */
export const slab = (width: number, height: number, middle: Spot = { x: 0, y: 0 }): readonly Spot[] => [
  { x: middle.x - width / 2, y: middle.y - height / 2 },
  { x: middle.x + width / 2, y: middle.y - height / 2 },
  { x: middle.x + width / 2, y: middle.y + height / 2 },
  { x: middle.x - width / 2, y: middle.y + height / 2 },
];

/** Lines through a place, level and upright, reaching so far each way. */
export const cross = ({ x, y }: Spot, reach: number): readonly (readonly [Spot, Spot])[] => [
  [
    { x: x - reach, y },
    { x: x + reach, y },
  ],
  [
    { x, y: y - reach },
    { x, y: y + reach },
  ],
];
