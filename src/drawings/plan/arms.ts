import { type FootSide, sidesInUse, strutOf } from '../feet.ts';
import { faceNormal } from '../foot-pin.ts';
import { faceNeeds, type Part, shaftNeeds } from '../part.ts';
import { minus, moved, unit } from '../point.ts';
import type { Outline } from '../scene.ts';
import { circle, polygon, slab } from '../shapes.ts';
import { throughBolt } from '../side/bolt.ts';
import { need } from '../values.ts';
import { seen } from './sheet.ts';

const sizeNeeds = ['foot_width', 'foot_pad', 'flange_thickness'] as const;
const boltNeeds = [
  'transom_thickness',
  'bed_thickness',
  'plate_thickness',
  'plate_area',
  'bolt_diameter',
  'foot_bolt_spacing',
] as const;

const arm = (side: FootSide): Part => ({
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
    ...sizeNeeds,
  ],
  applies: (values) => sidesInUse(values).includes(side),
  draw(values, { face, shaft }) {
    const strut = strutOf(values, face, shaft, side);
    const sizes = need(values, ...sizeNeeds);
    if (strut === null || sizes === null || face === null) return [];
    const [width, pad, flange] = sizes;
    const { y, z, od } = strut;
    const x = face.x(z, y);
    const normal = faceNormal(face, y, z);
    if (x === null || normal === null) return [];
    const at = seen(x, y);
    const out = unit(seen(normal.x, normal.y));
    const up = { x: -out.y, y: out.x };
    const pin = seen(strut.pin.x, strut.pin.y);
    const foot = seen(strut.footPin.x, strut.footPin.y);
    const along = unit(minus(pin, foot));
    const square = { x: -along.y, y: along.x };
    const half = od / 2;
    const back = moved(at, out, pad + flange);
    const shapes: Outline[] = [];
    const bolt = need(values, ...boltNeeds);
    if (bolt !== null && bolt[3] >= 0) {
      const [thickness, bed, plate, area, diameter, spacing] = bolt;
      for (const across of [-spacing / 2, spacing / 2]) {
        shapes.push(
          ...throughBolt({
            at: moved(at, up, across),
            up,
            out,
            diameter,
            outside: pad + flange,
            thickness,
            bed,
            plate,
            plateHalf: Math.min(Math.sqrt(area), spacing) / 2,
            part: 'bolt_diameter',
          }),
        );
      }
    }
    if (pad > 0)
      shapes.push(polygon('shim', slab(moved(at, out, pad / 2), up, width / 2, out, pad / 2), this.name));
    shapes.push(
      polygon('choice', slab(moved(at, out, pad + flange / 2), up, width / 2, out, flange / 2), this.name),
      polygon(
        'choice',
        [
          moved(back, up, -width * 0.28),
          moved(foot, up, -half * 0.8),
          moved(foot, up, half * 0.8),
          moved(back, up, width * 0.28),
        ],
        this.name,
      ),
      polygon(
        'choice',
        [
          moved(foot, square, -half),
          moved(foot, square, half),
          moved(pin, square, half),
          moved(pin, square, -half),
        ],
        this.name,
      ),
      circle('choice', foot, od * 0.2, this.name),
      circle('choice', pin, od * 0.2, this.name),
    );
    return shapes;
  },
});

export const arms: readonly Part[] = [arm('port'), arm('starboard'), arm('single')];
