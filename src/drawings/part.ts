import type { CellName } from '../plan/names.ts';
import type { Face } from './face.ts';
import type { Outline } from './scene.ts';
import type { Shaft } from './shaft.ts';
import type { Values } from './values.ts';

/** Where face and shaft are; null while they cannot be placed. */
export interface Ground {
  readonly face: Face | null;
  readonly shaft: Shaft | null;
}

/** One thing drawn in a view. */
export interface Part {
  /** The input it lights up for. */
  readonly name: string;
  /** Inputs and results without which it cannot be drawn. */
  readonly needs: readonly CellName[];
  /** False when the mount has no such part; absent: it always has. */
  readonly applies?: (values: Values) => boolean;
  readonly draw: (values: Values, ground: Ground) => Outline[];
}

/** What the axis rests on, for the parts that sit on it. */
export const shaftNeeds = ['shaft_x', 'lower_bracket_height', 'shaft_lean'] as const;

/** What the face rests on. */
export const faceNeeds = ['transom_rake', 'transom_camber_radius'] as const;
