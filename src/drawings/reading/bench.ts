import type { CellName, InputName } from '../../plan/names.ts';
import { groundOf } from '../assemble.ts';
import type { Face } from '../face.ts';
import type { Ground, Part } from '../part.ts';
import { arms } from '../plan/arms.ts';
import { clampFromAbove } from '../plan/clamp-from-above.ts';
import { auxiliaryBlade, ownBlade } from '../plan/rudder-blades.ts';
import { transomSection } from '../plan/transom-section.ts';
import type { Outline } from '../scene.ts';
import type { Shaft } from '../shaft.ts';
import { sideParts } from '../side/side-parts.ts';
import { sternStruts } from '../stern/feet.ts';
import { lowerFlange } from '../stern/lower-flange.ts';
import { transomOutline } from '../stern/transom-outline.ts';
import type { Values } from '../values.ts';
import type { Picture } from './picture.ts';

/** What pictures are made from: numbers that are always there, and the views' parts by name. */
export interface Bench {
  readonly values: Values;
  readonly ground: Ground;
  readonly face: Face;
  readonly shaft: Shaft;
  /** A number; 0 for a name without one. */
  readonly n: (name: CellName) => number;
  /** x of the face in the plane of the shaft, mm. */
  readonly x: (z: number) => number;
  /** Outlines of the named parts in each view; of all of them when none is named. */
  readonly side: (...parts: string[]) => Outline[];
  readonly stern: (...parts: string[]) => Outline[];
  readonly plan: (...parts: string[]) => Outline[];
}

const sternParts: readonly Part[] = [transomOutline, lowerFlange, ...sternStruts];
const planParts: readonly Part[] = [ownBlade, auxiliaryBlade, transomSection, ...arms, clampFromAbove];

/** The bench for a set of values; null where even typical sizes leave no face or shaft to draw. */
export function benchFor(values: Values): Bench | null {
  const ground = groundOf(values);
  const { face, shaft } = ground;
  if (face === null || shaft === null) return null;
  const view =
    (parts: readonly Part[]) =>
    (...names: string[]): Outline[] =>
      parts
        .filter(
          (part) => (names.length === 0 || names.includes(part.name)) && (part.applies?.(values) ?? true),
        )
        .flatMap((part) => part.draw(values, ground));
  return {
    values,
    ground,
    face,
    shaft,
    n: (name) => values.number(name) ?? 0,
    x: (z) => face.x(z) ?? 0,
    side: view(sideParts),
    stern: view(sternParts),
    plan: view(planParts),
  };
}

/** Water below the waterline, for pictures in which it matters. */
export const water: Outline = { kind: 'water', role: 'water', level: 0 };

/** Pictures by the input that is read in them. */
export type Pictures = Readonly<Partial<Record<InputName, (bench: Bench) => Picture>>>;
