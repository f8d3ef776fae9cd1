import { type FootSide, sidesInUse, strutOf } from '../feet.ts';
import { faceNeeds, type Ground, type Part, shaftNeeds } from '../part.ts';
import { minus, moved, point, unit } from '../point.ts';
import type { Outline } from '../scene.ts';
import { circle, polygon, slab } from '../shapes.ts';
import { need, type Values } from '../values.ts';
import { throughBolt } from './bolt.ts';

const footNeeds = ['foot_height', 'foot_pad', 'flange_thickness'] as const;
const boltNeeds = [
  'transom_thickness',
  'bed_thickness',
  'plate_thickness',
  'plate_area',
  'bolt_diameter',
] as const;

function drawStrut(values: Values, { face, shaft }: Ground, side: FootSide): Outline[] {
  const strut = strutOf(values, face, shaft, side);
  const sizes = need(values, ...footNeeds);
  if (strut === null || sizes === null || face === null) return [];
  const [height, pad, flange] = sizes;
  const { part, y, z, od } = strut;
  const x = face.x(z, y);
  if (x === null) return [];
  const up = face.up(z);
  const out = face.out(z);
  const at = point(x, z);
  const pin = point(strut.pin.x, strut.pin.z);
  const foot = point(strut.footPin.x, strut.footPin.z);
  const along = unit(minus(pin, foot));
  const square = { x: -along.y, y: along.x };
  const back = moved(at, out, pad + flange);
  const lug = od * 0.42;
  const bolt = need(values, ...boltNeeds);
  const shapes: Outline[] = [];
  if (bolt !== null && bolt[3] >= 0) {
    const [thickness, bed, plate, area, diameter] = bolt;
    const plateHalf = Math.sqrt(area) / 2;
    shapes.push(
      ...throughBolt({
        at,
        up,
        out,
        diameter,
        outside: pad + flange,
        thickness,
        bed,
        plate,
        plateHalf,
        part: 'bolt_diameter',
      }),
    );
  }
  shapes.push(
    polygon(
      'choice',
      [
        moved(foot, square, -lug),
        moved(back, up, -height * 0.28),
        moved(back, up, height * 0.28),
        moved(foot, square, lug),
      ],
      part,
    ),
    polygon('choice', slab(moved(at, out, pad + flange / 2), up, height / 2, out, flange / 2), part),
    polygon(
      'choice',
      [
        moved(foot, square, -od / 2),
        moved(foot, square, od / 2),
        moved(pin, square, od / 2),
        moved(pin, square, -od / 2),
      ],
      part,
    ),
    circle('choice', foot, od * 0.2, part),
    circle('choice', pin, od * 0.2, part),
  );
  if (pad > 0)
    shapes.push(polygon('shim', slab(moved(at, out, pad / 2), up, height / 2, out, pad / 2), part));
  return shapes;
}

/** One strut with its foot, pins and bolts. */
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
    ...footNeeds,
  ],
  applies: (values) => sidesInUse(values).includes(side),
  draw: (values, ground) => drawStrut(values, ground, side),
});

/** Seen from port, so the starboard strut comes first and the port one covers it. */
export const struts: readonly Part[] = [strut('starboard'), strut('port'), strut('single')];
