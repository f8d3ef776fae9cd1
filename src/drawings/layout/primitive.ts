import type { Role } from '../scene.ts';
import type { TextStyle } from './lettering.ts';

/** Roles that only come up when a scene is set on a page. */
export type PageRole =
  | 'dimension'
  | 'stroke'
  | 'extension'
  | 'leader'
  | 'ring'
  | 'detail'
  | 'detail-edge'
  | 'plate'
  | 'frame'
  | 'ground'
  | 'rule'
  | 'pointer'
  | 'pointer-behind'
  | 'level'
  | 'number'
  | 'window'
  | 'slot'
  | 'jaw'
  | 'peg'
  | 'peg-half'
  | 'peg-outside'
  | 'slot-dashed'
  | 'jaw-dashed';

export type TextRole = 'text' | 'text-soft' | 'text-choice' | 'text-plate';

interface Placed {
  readonly part?: string;
  readonly lit?: true;
  /** Name of the clip it is cut off by. */
  readonly clip?: string;
}

export interface PathPrimitive extends Placed {
  readonly kind: 'path';
  readonly role: Role | PageRole;
  readonly d: string;
}

export interface CirclePrimitive extends Placed {
  readonly kind: 'circle';
  readonly role: Role | PageRole;
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
}

export interface RectPrimitive extends Placed {
  readonly kind: 'rect';
  readonly role: Role | PageRole;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface TextPrimitive extends Placed {
  readonly kind: 'text';
  readonly role: TextRole;
  readonly style: TextStyle;
  /** Start of the baseline, px. */
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Width it was given, px. */
  readonly width: number;
}

/** One thing at its place on the page, px from the top left. */
export type Primitive = PathPrimitive | CirclePrimitive | RectPrimitive | TextPrimitive;

export type Clip =
  | {
      readonly name: string;
      readonly kind: 'circle';
      readonly cx: number;
      readonly cy: number;
      readonly r: number;
    }
  | {
      readonly name: string;
      readonly kind: 'rect';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    };
