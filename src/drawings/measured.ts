import type { CellName } from '../plan/names.ts';
import { angleFigure, type Figure, lengthFigure } from './figure.ts';
import { findLimit, type LimitState } from './limits.ts';
import type { SceneOptions } from './options.ts';
import type { Point } from './point.ts';
import type { Dimension, Place } from './scene.ts';
import { number, type Values } from './values.ts';
import { captionOf } from './words.ts';

/** State and nearer bound of the limit on a result. */
export function judged(
  options: SceneOptions,
  name: string,
): { state: LimitState | null; bound: number | null } {
  const limit = findLimit(options.limits, name);
  if (limit === null) return { state: null, bound: null };
  const { value, low, high } = limit;
  const bound =
    low !== null && high !== null && value !== null
      ? value - low < high - value
        ? low
        : high
      : (low ?? high);
  return { state: limit.state, bound };
}

/** A result as lettered: with decimals enough to tell it from its bound. */
export function resultFigure(
  values: Values,
  options: SceneOptions,
  name: CellName,
  unit: 'mm' | 'deg' = 'mm',
): Figure | null {
  const value = number(values, name);
  if (value === null) return null;
  const { bound } = judged(options, name);
  return unit === 'mm' ? lengthFigure(value, options.unit, bound) : angleFigure(value, bound);
}

export interface Measured {
  readonly name: CellName;
  readonly from: Point;
  readonly to: Point;
  readonly place: Place;
  readonly off?: Dimension['off'];
  readonly close?: Dimension['close'];
}

/** The dimension of a result, lettered by its state; nothing when the result has no value. */
export function resultDimension(values: Values, options: SceneOptions, it: Measured): Dimension[] {
  const figure = resultFigure(values, options, it.name);
  if (figure === null) return [];
  const other = options.ghost === undefined ? null : resultFigure(options.ghost, options, it.name);
  return [
    {
      kind: 'dimension',
      role: 'dimension',
      name: it.name,
      caption: captionOf(it.name),
      from: it.from,
      to: it.to,
      place: it.place,
      figure,
      state: judged(options, it.name).state,
      ...(it.off === undefined ? {} : { off: it.off }),
      ...(it.close === undefined ? {} : { close: it.close }),
      ...(other !== null && other.first !== figure.first ? { behind: other } : {}),
    },
  ];
}
