import type { Figure } from '../figure.ts';
import { type Box, type Point, widened } from '../point.ts';
import type { Dimension, Label, Scene, Shape } from '../scene.ts';
import { boxOfShapes, isDrawn } from '../shapes.ts';

/** A picture of how something is measured, on a boat of no particular size. */
export const surveyScene = (title: string, shapes: readonly Shape[], box?: Box): Scene => ({
  kind: 'reading',
  title,
  box: box ?? widened(boxOfShapes(shapes.filter(isDrawn)) ?? { x0: -500, y0: -500, x1: 500, y1: 500 }, 20),
  shapes,
  handles: [],
  rule: null,
  cropped: false,
});

/** A length as a word or a number of its own, where it is measured. */
export function asked(
  name: string,
  words: string,
  from: Point,
  to: Point,
  legs?: readonly [Point, Point],
): Dimension {
  const figure: Figure = { first: words };
  return {
    kind: 'dimension',
    role: 'dimension',
    name,
    caption: '',
    from,
    to,
    place: 'here',
    figure,
    state: null,
    ...(legs === undefined ? {} : { legs }),
  };
}

export const note = (lines: readonly string[], at: Point): Label => ({
  kind: 'label',
  role: 'reason',
  lines,
  at,
});

export const numbered = (number: number, at: Point, part?: string): Label => ({
  kind: 'label',
  role: 'number',
  lines: [String(number)],
  at,
  ...(part === undefined ? {} : { part }),
});
