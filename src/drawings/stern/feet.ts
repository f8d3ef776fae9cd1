import { type FootSide, sidesInUse, strutOf } from '../feet.ts';
import { faceNeeds, type Part, shaftNeeds } from '../part.ts';
import { minus, moved, point, unit } from '../point.ts';
import type { Outline } from '../scene.ts';
import { circle, polygon, slab } from '../shapes.ts';
import { need, type Values } from '../values.ts';
import { boltHole } from './bolt-holes.ts';

const plateNeeds = ['foot_width', 'foot_height', 'foot_bolt_count', 'foot_bolt_spacing'] as const;
/** More rows of bolts than this are no foot anybody makes. */
const MOST_ROWS = 6;

function foot(values: Values, y: number, z: number, part: string): Outline[] {
  const got = need(values, ...plateNeeds);
  if (got === null) return [];
  const [width, height, count, spacing] = got;
  const rows = Math.min(MOST_ROWS, Math.max(1, Math.round(count / 2)));
  const bolts: Outline[] = [];
  for (let row = 0; row < rows; row++) {
    const level = z + ((row + 0.5) / rows - 0.5) * height;
    bolts.push(
      ...boltHole(values, point(y - spacing / 2, level)),
      ...boltHole(values, point(y + spacing / 2, level)),
    );
  }
  return [
    polygon('choice', slab(point(y, z), { x: 1, y: 0 }, width / 2, { x: 0, y: 1 }, height / 2), part),
    ...bolts,
  ];
}

const strut = (side: FootSide): Part => ({
  name: `${side}_foot_height`,
  needs: [
    ...faceNeeds,
    ...shaftNeeds,
    'strut_count',
    `${side}_foot_y`,
    `${side}_foot_height`,
    'upper_bracket_height',
    'pin_forward',
    'pin_half_width',
    'shaft_offset',
    'foot_standoff',
    side === 'single' ? 'single_strut_od' : 'strut_od',
    ...plateNeeds,
  ],
  applies: (values) => sidesInUse(values).includes(side),
  draw(values, { face, shaft }) {
    const it = strutOf(values, face, shaft, side);
    if (it === null) return [];
    const pin = point(it.pin.y, it.pin.z);
    const end = point(it.footPin.y, it.footPin.z);
    const along = unit(minus(pin, end));
    const square = { x: -along.y, y: along.x };
    const half = it.od / 2;
    const tube =
      side === 'single'
        ? [circle('choice', end, half, this.name)]
        : [
            polygon(
              'choice',
              [
                moved(end, square, -half),
                moved(end, square, half),
                moved(pin, square, half),
                moved(pin, square, -half),
              ],
              this.name,
            ),
            circle('choice', end, it.od * 0.2, this.name),
            circle('choice', pin, it.od * 0.2, this.name),
          ];
    return [...foot(values, it.y, it.z, this.name), ...tube];
  },
});

export const sternStruts: readonly Part[] = [strut('port'), strut('starboard'), strut('single')];
