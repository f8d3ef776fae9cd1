import type { Figure } from './figure.ts';
import type { LimitState } from './limits.ts';
import type { Box, Point } from './point.ts';

/** What a line or surface stands for; its pen is chosen when the scene is set on a page. */
export type Role =
  | 'outline'
  | 'cut'
  | 'hatch'
  | 'soft'
  | 'soft-fill'
  | 'choice'
  | 'shim'
  | 'fastener'
  | 'hidden'
  | 'axis'
  | 'break'
  | 'water'
  | 'waterline'
  | 'heeled'
  | 'sector'
  | 'sector-soft'
  | 'dashed'
  | 'ghost'
  | 'lost';

interface Drawn {
  readonly role: Role;
  /** The input or choice this belongs to, for lighting and pointing. */
  readonly part?: string;
  readonly lit?: true;
}

export interface Polyline extends Drawn {
  readonly kind: 'polyline';
  readonly points: readonly Point[];
}

export interface Polygon extends Drawn {
  readonly kind: 'polygon';
  readonly points: readonly Point[];
}

/** Hatching at 45° of the surface inside the points. */
export interface Hatch extends Drawn {
  readonly kind: 'hatch';
  readonly points: readonly Point[];
  /** Leans the other way, so that two cut parts side by side stay apart. */
  readonly other?: true;
}

export interface Circle extends Drawn {
  readonly kind: 'circle';
  readonly at: Point;
  readonly radius: number;
}

/** Part of a circle, degrees anticlockwise from the right; a sector is closed to its centre. */
export interface Arc extends Drawn {
  readonly kind: 'arc';
  readonly at: Point;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  readonly sector?: true;
}

/** Everything below this height is water. */
export interface Water extends Drawn {
  readonly kind: 'water';
  readonly level: number;
}

/** Lettering that names a part; left out where there is no room. */
export interface Label {
  readonly kind: 'label';
  readonly role: 'name' | 'reason' | 'number' | 'figure';
  readonly lines: readonly string[];
  readonly at: Point;
  /** Stays inside these bounds; without them it stands beside `at`. */
  readonly inside?: Box;
  readonly part?: string;
  /** Pointed at. */
  readonly lit?: true;
}

/** Where a dimension's line is drawn. */
export type Place =
  /** Between the two points themselves. */
  | 'here'
  /** In the column aft of everything, labels beside it. */
  | 'right'
  /** In a row above or below everything. */
  | 'above'
  | 'below';

export interface Dimension {
  readonly kind: 'dimension';
  readonly role: 'dimension';
  /** The result or input it shows. */
  readonly name: string;
  readonly caption: string;
  readonly from: Point;
  readonly to: Point;
  readonly place: Place;
  /** Direction in which the line is set off from its points, and how far on the page, px. */
  readonly off?: { readonly towards: Point; readonly px: number };
  /** Points on the part from which extension lines run to the ends of the line. */
  readonly legs?: readonly [Point, Point];
  readonly figure: Figure;
  /** The same result in the scenario behind, when it differs. */
  readonly behind?: Figure;
  readonly state: LimitState | null;
  /** Where to look when it is drawn again enlarged; absent: never enlarged. */
  readonly close?: {
    readonly from: Point;
    readonly to: Point;
    /** Where the ring stands that says what is enlarged; midway unless given. */
    readonly ring?: Point;
    /** Only these parts are drawn enlarged; all of them unless given. */
    readonly parts?: readonly string[];
  };
  /** The one figure of a picture: lettered larger. */
  readonly lead?: true;
}

/** An angle between two directions at a point, degrees anticlockwise from the right. */
export interface Angle {
  readonly kind: 'angle';
  readonly role: 'dimension';
  readonly name: string;
  readonly caption: string;
  readonly at: Point;
  readonly from: number;
  readonly to: number;
  /** Radius of the arc, mm. */
  readonly radius: number;
  readonly figure: Figure;
  readonly state: LimitState | null;
  readonly lead?: true;
}

/** A height above the waterline, read at the rule. */
export interface Level {
  readonly kind: 'level';
  readonly role: 'level';
  readonly name: string;
  readonly caption: string;
  readonly height: number;
  readonly figure: Figure;
  readonly behind?: { readonly height: number; readonly figure: Figure };
  readonly part?: string;
  readonly lit?: true;
}

export type Outline = Polyline | Polygon | Hatch | Circle | Arc | Water;
export type Shape = Outline | Label | Dimension | Angle | Level;

/** Where a choice can be taken hold of. */
export interface Handle {
  readonly name: string;
  readonly at: Point;
  readonly moves: 'up and down' | 'fore and aft' | 'athwartships';
}

/** A drawing to scale as plain data: no colours, no pixels. */
export interface Scene {
  readonly kind: 'side' | 'stern' | 'plan' | 'reading' | 'new plan';
  /** One sentence that says what is seen. */
  readonly title: string;
  readonly box: Box;
  readonly shapes: readonly Shape[];
  readonly handles: readonly Handle[];
  /** The graduated rule at the left edge, and in what it counts. */
  readonly rule: 'mm' | 'in' | null;
  /** The box is a window on a larger scene: what lies outside it is cut off. */
  readonly cropped: boolean;
}
