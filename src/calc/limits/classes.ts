/**
 * What it means that a limit is outside, the gravest first: the parts cannot be put together at all, something comes
 * too close or lies askew, or something is loaded too high.
 */
export const CLASSES = ['cannot be built', 'too close', 'too weak'] as const;
export type LimitClass = (typeof CLASSES)[number];

/** A limit's class; `unbuildableBelow` in the result's unit, where only values under it cannot be built. */
export interface Classed {
  readonly class: LimitClass;
  readonly unbuildableBelow?: number;
}

/** The class of a limit whose result has this value: a gap that is small is too close, parts that overlap cannot be built. */
export const classAt = (of: Classed, value: number | undefined): LimitClass =>
  of.unbuildableBelow !== undefined && value !== undefined && value < of.unbuildableBelow
    ? 'cannot be built'
    : of.class;
