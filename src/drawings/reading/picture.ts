import type { Figure } from '../figure.ts';
import { type Box, boxOf, type Point, point } from '../point.ts';
import type { Angle, Dimension, Label, Outline } from '../scene.ts';

/** What one picture shows: outlines, the one thing measured, and how wide to look. */
export interface Picture {
  readonly shapes: readonly Outline[];
  readonly measured: Measure | AngleMeasure | AreaMeasure;
  /** Width of what is seen, mm; a little over twice the measured length unless given. */
  readonly wide?: number;
  /** Middle of what is seen; the measured thing's own middle unless given. */
  readonly about?: Point;
}

export interface Measure {
  readonly kind: 'length';
  readonly from: Point;
  readonly to: Point;
  /** Points on the part from which extension lines run to the dimension line. */
  readonly legs?: readonly [Point, Point];
}

export interface AngleMeasure {
  readonly kind: 'angle';
  readonly at: Point;
  readonly from: number;
  readonly to: number;
  readonly radius: number;
}

/** A surface: its figure stands in it. */
export interface AreaMeasure {
  readonly kind: 'area';
  readonly at: Point;
}

/** Shape of a picture, width over height. */
const ASPECT = 1.6;
/** How much wider than the measured length a picture looks, and the least width, mm. */
const ROUND = 2.3;
const LEAST = 60;

export const length = (from: Point, to: Point, legs?: readonly [Point, Point]): Measure => ({
  kind: 'length',
  from,
  to,
  ...(legs === undefined ? {} : { legs }),
});

/** Up and down beside a part: the line stands at `x`, extension lines run to the part at `onPart`. */
export const upright = (x: number, from: number, to: number, onPart: number, onPartTo = onPart): Measure =>
  length(point(x, from), point(x, to), [point(onPart, from), point(onPartTo, to)]);

/** Level, above or below a part: the line lies at height `y`. */
export const level = (y: number, from: number, to: number, onPart: number, onPartTo = onPart): Measure =>
  length(point(from, y), point(to, y), [point(from, onPart), point(to, onPartTo)]);

/** The dimension of a picture, as lettered. */
export function measuredShape(
  name: string,
  { measured }: Picture,
  figure: Figure,
): Dimension | Angle | Label {
  if (measured.kind === 'area')
    return { kind: 'label', role: 'figure', lines: [figure.first], at: measured.at };
  const common = { role: 'dimension', name, caption: '', figure, state: null, lead: true } as const;
  if (measured.kind === 'angle') {
    const { at, from, to, radius } = measured;
    return { kind: 'angle', ...common, at, from, to, radius };
  }
  const { from, to, legs } = measured;
  return { kind: 'dimension', ...common, from, to, place: 'here', ...(legs === undefined ? {} : { legs }) };
}

/** The window through which a picture is seen. */
export function windowOf({ measured, wide, about }: Picture): Box {
  const ends =
    measured.kind === 'angle'
      ? [
          point(measured.at.x - measured.radius, measured.at.y - measured.radius),
          point(measured.at.x + measured.radius, measured.at.y + measured.radius),
        ]
      : measured.kind === 'area'
        ? [measured.at]
        : [measured.from, measured.to];
  const box = boxOf(ends) ?? { x0: 0, y0: 0, x1: 0, y1: 0 };
  const width = wide ?? Math.max(LEAST, (box.x1 - box.x0) * ROUND, (box.y1 - box.y0) * ROUND * 0.75 * ASPECT);
  const middle = about ?? point((box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2);
  const height = width / ASPECT;
  return {
    x0: middle.x - width / 2,
    y0: middle.y - height / 2,
    x1: middle.x + width / 2,
    y1: middle.y + height / 2,
  };
}
