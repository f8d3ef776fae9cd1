import type { CellName } from '../plan/names.ts';
import { groundOf } from './assemble.ts';
import { type Point, point, widened } from './point.ts';
import { withTypical } from './reading/typical.ts';
import type { Label, Outline, Scene } from './scene.ts';
import { boxOfShapes } from './shapes.ts';
import { sideParts } from './side/side-parts.ts';
import type { Values } from './values.ts';

/** A place where the boat is measured, in the order in which the readings are taken. */
export interface MeasuringPoint {
  readonly number: number;
  /** The input read there. */
  readonly name: string;
  readonly at: Point;
}

const empty: Values = { number: () => null, flag: () => null };

/** The parts that give the outline of a mount; bolts and shims only fill it. */
const outlined = new Set(
  sideParts
    .filter((part) => part.name !== 'bolt_diameter' && part.name !== 'shim_count')
    .map((part) => part.name),
);

const dashed = (shape: Outline): Outline[] =>
  shape.kind === 'hatch' || shape.role === 'axis' || shape.role === 'hidden' || shape.role === 'break'
    ? []
    : [{ ...shape, role: 'dashed' }];

/** Where each reading is taken, on the outline of the typical mount. */
function measuringPoints(values: Values): MeasuringPoint[] {
  const { face, shaft } = groundOf(values);
  if (face === null || shaft === null) return [];
  const n = (name: CellName): number => values.number(name) ?? 0;
  const onFace = (z: number, ahead = 0): Point => point((face.x(z) ?? 0) - ahead, z);
  const [top, bottom] = [n('transom_top'), n('transom_bottom')];
  const [head, foot] = [n('main_rudder_head'), n('main_rudder_foot')];
  const beforeStock = -n('rudder_stock_ahead') * 0.5;
  const middle = n('vane_rudder_head') - n('vane_rudder_span') * 0.5;
  const places: readonly (readonly [name: string, at: Point])[] = [
    ['transom_rake', onFace((top + bottom) * 0.55)],
    ['transom_top', onFace(top)],
    ['transom_bottom', onFace(bottom)],
    ['transom_thickness', onFace((top + bottom) * 0.4, n('transom_thickness'))],
    ['main_rudder_head', point(beforeStock, head)],
    ['main_rudder_foot', point(beforeStock, foot)],
    ['rudder_overhang', point(n('rudder_overhang'), head)],
    ['rudder_overhang_foot', point(n('rudder_overhang_foot'), foot)],
    ['shaft_length', shaft.at((n('lower_bracket_height') + n('upper_bracket_height')) / 2)],
    ['lower_reach', onFace(n('lower_bracket_height'), -n('lower_reach') * 0.8)],
    ['vane_rudder_balance', point(shaft.at(middle).x - n('vane_rudder_balance'), middle)],
  ];
  return places.map(([name, at], i) => ({ number: i + 1, name, at }));
}

/** A new plan, nothing read yet: the mount dashed, with the places to measure numbered; `lit` is the one pointed at. */
export function newPlan(lit?: string): Scene & { readonly points: readonly MeasuringPoint[] } {
  const values = withTypical(empty);
  const ground = groundOf(values);
  const shapes = sideParts
    .filter((part) => outlined.has(part.name) && (part.applies?.(values) ?? true))
    .flatMap((part) => part.draw(values, ground))
    .flatMap(dashed);
  const points = measuringPoints(values);
  const numbers = points.map(
    ({ number, name, at }): Label => ({
      kind: 'label',
      role: 'number',
      lines: [String(number)],
      at,
      part: name,
      ...(name === lit ? { lit: true as const } : {}),
    }),
  );
  const water: Outline = { kind: 'water', role: 'water', level: 0 };
  return {
    kind: 'new plan',
    title: 'A mount from the side, dashed, with the places to measure numbered',
    box: widened(boxOfShapes(shapes) ?? { x0: -500, y0: -1200, x1: 500, y1: 1200 }, 30),
    shapes: [water, ...shapes, ...numbers],
    handles: [],
    rule: null,
    cropped: false,
    points,
  };
}
