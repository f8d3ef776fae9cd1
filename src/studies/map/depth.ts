import { isFailing } from '../look.ts';

/** How far inside a limit stands that says no more than yes, or that does not apply. */
const HELD = 1;
/** How far outside a limit stands that says no more than no, or nothing at all. */
const NOT_HELD = -1;

/**
 * How far inside its bound a limit stands at a point, as one number that can be read off between points: its room
 * ratio; where it has none, one whole inside or outside.
 */
export const depthOf = (state: number, ratio: number): number =>
  Number.isNaN(ratio) ? (isFailing(state) ? NOT_HELD : HELD) : ratio;

/**
 * What a limit counts as when the least room is looked for: a yes/no limit that holds, and one that does not apply,
 * leave all others their room. One without an answer counts as outside, because nothing says that it holds.
 */
export const leastOf = (state: number, ratio: number): number =>
  Number.isNaN(ratio) && !isFailing(state) ? Number.POSITIVE_INFINITY : depthOf(state, ratio);
