import { type Answer, NoAnswer } from '../answer.ts';
import { type Argument, record } from '../record.ts';
import { faceX } from '../transom/face-x.ts';
import { type Profile, profileArgument, profileSlope } from '../transom/profile.ts';
import type { Vector } from '../vector.ts';

/** The outward normal, length 1, of a face that slopes by dx/dz, `y` mm from the centreline. */
export function normalAt(y: number, slope: number, radius: number): Vector {
  const turn = radius === 0 ? 0 : y / Math.sqrt(radius * radius - y * y);
  const x = 1 / Math.sqrt(1 + turn * turn + slope * slope);
  return { x, y: turn * x, z: -slope * x };
}

/** The face's outward normal at (y, z), length 1. */
export const faceNormal = (
  y: number,
  z: number,
  rake: number,
  radius: number,
  profile: Profile = [],
): Vector => normalAt(y, profileSlope(z, rake, profile), radius);

/** The foot's hinge pin: `standoff` mm off the face at (y, z), square to it. */
export function footPin(
  y: number,
  z: number,
  standoff: number,
  rake: number,
  radius: number,
  profile: Profile = [],
): Vector | NoAnswer {
  const face = faceX(y, z, rake, radius, profile);
  if (typeof face !== 'number') return face;
  const normal = faceNormal(y, z, rake, radius, profile);
  return { x: face + standoff * normal.x, y: y + standoff * normal.y, z: z + standoff * normal.z };
}

const part =
  (axis: keyof Vector) =>
  (y: number, z: number, standoff: number, rake: number, radius: number, profile: Profile = []): Answer => {
    const pin = footPin(y, z, standoff, rake, radius, profile);
    return pin instanceof NoAnswer ? pin : pin[axis];
  };

const footArguments: readonly Argument[] = [
  { name: 'y', unit: 'mm', meaning: "The foot's distance from the centreline" },
  { name: 'z', unit: 'mm', meaning: "The foot's height" },
  { name: 'standoff', unit: 'mm', meaning: 'The distance from the face to the hinge pin', least: 0 },
  { name: 'rake', unit: 'deg', meaning: "The transom's rake" },
  { name: 'camber_radius', unit: 'mm', meaning: "The transom's camber radius", least: 0 },
  profileArgument,
];

const pinRecord = (id: string, title: string, axis: keyof Vector, answer: number) =>
  record({
    id,
    title,
    arguments: footArguments,
    unit: 'mm',
    formula: `the face at the foot plus the standoff along the face's normal, its ${axis}`,
    source: 'plane geometry: the normal of a surface is its gradient',
    example: {
      given: [
        ...[600, 50, 65, 12, 1000],
        [
          [10, 20],
          [110, 320],
        ],
      ],
      answer,
      tolerance: 1e-9,
      source:
        'by hand: slopes of ¾ across and 3 up, so the normal is (4, 3, −12)/13; the face is at 140 − 200',
    },
    run: part(axis),
  });

export const footPinXRecord = pinRecord('FOOT_PIN_X', "The foot pin's distance aft", 'x', -40);
export const footPinYRecord = pinRecord('FOOT_PIN_Y', "The foot pin's distance to starboard", 'y', 615);
export const footPinZRecord = pinRecord('FOOT_PIN_Z', "The foot pin's height", 'z', -10);
