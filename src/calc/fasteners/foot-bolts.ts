import { tan } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { caseArguments, loadCases } from '../loads/cases.ts';
import { type Argument, type Example, record } from '../record.ts';
import { normalAt } from '../struts/foot-pin.ts';
import { type PairPins, pairPinArguments, strutPair, worstForces } from '../struts/pair-forces.ts';
import { minus, scaled } from '../vector.ts';
import { type BoltGiven, boltArguments, worstShare } from './bolt-share.ts';
import { footFlange, frameOf, type Pull, rigidPull, strutPull } from './foot-pull.ts';

const footArguments: readonly Argument[] = [
  { name: 'upper_reaction', unit: 'N', meaning: 'What the upper clamp holds' },
  ...caseArguments,
  { name: 'count', unit: '–', meaning: 'The bolts in a foot', above: 0 },
  { name: 'spacing', unit: 'mm', meaning: "The foot's bolt spacing", above: 0 },
  { name: 'height', unit: 'mm', meaning: "The foot's height along the face", above: 0 },
  { name: 'standoff', unit: 'mm', meaning: 'The distance from the face to the hinge pin', least: 0 },
];

const radiusArgument: Argument = {
  name: 'camber_radius',
  unit: 'mm',
  meaning: "The transom's camber radius",
  least: 0,
};

type TwoGiven = readonly [
  reaction: number,
  drag: number,
  swing: number,
  count: number,
  spacing: number,
  height: number,
  standoff: number,
  portY: number,
  portSlope: number,
  starboardY: number,
  starboardSlope: number,
  radius: number,
  ...pins: PairPins,
];

/** Where the pins stand among what is given. */
const PINS = 12;

const twoArguments: readonly Argument[] = [
  ...footArguments,
  { name: 'port_y', unit: 'mm', meaning: "The port foot's distance to starboard" },
  { name: 'port_slope', unit: 'deg', meaning: "The transom's slope at the port foot" },
  { name: 'starboard_y', unit: 'mm', meaning: "The starboard foot's distance to starboard" },
  { name: 'starboard_slope', unit: 'deg', meaning: "The transom's slope at the starboard foot" },
  radiusArgument,
  ...pairPinArguments,
];

/** Worst pull and shear on one bolt of each foot. Read by place: taking the list apart takes as long as the sums. */
function twoStrutPulls(given: TwoGiven): readonly [Pull, Pull] | NoAnswer {
  const pair = strutPair(given, PINS);
  if (pair instanceof NoAnswer) return pair;
  const forces = worstForces(pair, given[0], given[1], given[2]);
  const flange = footFlange(given[3], given[4], given[5]);
  const standoff = given[6];
  const radius = given[11];
  const port = normalAt(given[7], tan(given[8]), radius);
  const starboard = normalAt(given[9], tan(given[10]), radius);
  return [
    strutPull(forces.port, pair.port.along, port, standoff, flange),
    strutPull(forces.starboard, pair.starboard.along, starboard, standoff, flange),
  ];
}

type OneGiven = readonly [
  reaction: number,
  drag: number,
  swing: number,
  count: number,
  spacing: number,
  height: number,
  standoff: number,
  footY: number,
  footSlope: number,
  radius: number,
  footPinX: number,
  footPinY: number,
  footPinZ: number,
  axisX: number,
  pinX: number,
  clampY: number,
  clampZ: number,
];

const oneArguments: readonly Argument[] = [
  ...footArguments,
  { name: 'foot_y', unit: 'mm', meaning: "The foot's distance to starboard" },
  { name: 'foot_slope', unit: 'deg', meaning: "The transom's slope at the foot" },
  radiusArgument,
  { name: 'foot_pin_x', unit: 'mm', meaning: "The foot pin's x" },
  { name: 'foot_pin_y', unit: 'mm', meaning: "The foot pin's y" },
  { name: 'foot_pin_z', unit: 'mm', meaning: "The foot pin's height" },
  { name: 'axis_x', unit: 'mm', meaning: "The shaft axis's x at the upper bracket" },
  { name: 'pin_x', unit: 'mm', meaning: "The clamp pin's x" },
  { name: 'clamp_y', unit: 'mm', meaning: "The shaft axis's y at the upper bracket" },
  { name: 'clamp_z', unit: 'mm', meaning: "The upper bracket's height" },
];

/**
 * Pull and shear on the bolts of a single strut's foot, which is clamped rigid: in each load case the force sideways
 * takes hold at the shaft's axis, the force fore and aft runs along the strut from the clamp's pin.
 */
function oneStrutPulls(given: OneGiven): readonly Pull[] | NoAnswer {
  const [reaction, drag, swing, count, spacing, height, standoff, footY, footSlope, radius] = given;
  const [, , , , , , , , , , footPinX, footPinY, footPinZ, axisX, pinX, clampY, clampZ] = given;
  if (pinX === footPinX) {
    return new NoAnswer('The strut runs straight across the boat, so it holds nothing fore and aft.');
  }
  const frame = frameOf(normalAt(footY, tan(footSlope), radius));
  const flange = footFlange(count, spacing, height);
  const foot = minus({ x: footPinX, y: footPinY, z: footPinZ }, scaled(frame.normal, standoff));
  const axis = minus({ x: axisX, y: clampY, z: clampZ }, foot);
  const pin = minus({ x: pinX, y: clampY, z: clampZ }, foot);
  const steep = (clampZ - footPinZ) / (pinX - footPinX);
  return loadCases(drag, swing).map(({ sideways, foreAft }) =>
    rigidPull(
      [
        [axis, { x: 0, y: reaction * sideways, z: 0 }],
        [pin, { x: reaction * foreAft, y: 0, z: reaction * foreAft * steep }],
      ],
      frame,
      flange,
    ),
  );
}

const worst = (pulls: readonly Pull[] | NoAnswer, of: keyof Pull): Answer =>
  pulls instanceof NoAnswer ? pulls : pulls.reduce((most, it) => Math.max(most, it[of]), 0);

const shareOf = (pulls: readonly Pull[] | NoAnswer, bolt: BoltGiven): Answer =>
  pulls instanceof NoAnswer ? pulls : worstShare(bolt, pulls);

const SLOPE = (Math.atan2(3, 4) * 180) / Math.PI;

// Four bolts 80 × 121 mm on a face that rises 4 for 3 aft, lever 80·2 and 121·2/1.21; the struts rise 3-4-12 over 13
// from feet 600 to either side. Sideways 1000 N brings each 1000/2 over 4/13 of itself, fore and aft 240 N another
// 240/2 over 12/13.
const TWO = [1000, 0.24, 10, 4, 80, 121, 40, -600, SLOPE, 600, SLOPE, 0] as const;
const PINS_AT = [1230, -200, 200, 370, 30, -600, 70, 30, 600, 70] as const;
const ALONG = 1000 / 2 / (4 / 13) + 240 / 2 / (12 / 13);

const twoExample = (answer: number, before: readonly number[] = []): Example => ({
  given: [...before, ...TWO, ...PINS_AT],
  answer,
  tolerance: 1e-9,
  source:
    'by hand: struts of 3-4-12 over 13; 1755 N in one, 39/65 of it square, 20/65 level and 48/65 up the face',
});

const TWO_TENSION = (ALONG * 39) / 65 / 4 + 40 * ((ALONG * 20) / 65 / 160 + (ALONG * 48) / 65 / 200);
const TWO_SHEAR = (ALONG * 52) / 65 / 4;

export const twoFootBoltTensionRecord = record({
  id: 'TWO_FOOT_BOLT_TENSION',
  title: 'Pull on one bolt of a strut foot, two struts',
  arguments: twoArguments,
  unit: 'N',
  formula:
    'pull over the bolts, plus standoff × (level slide over ½ bolts × spacing + upward slide over ½ bolts × height, that lever over 1.21 with more than two bolts); the worst of both feet and every case',
  source: 'statics',
  example: twoExample(TWO_TENSION),
  run: (...given: TwoGiven) => worst(twoStrutPulls(given), 'tension'),
});

export const twoFootBoltShearRecord = record({
  id: 'TWO_FOOT_BOLT_SHEAR',
  title: 'Shear on one bolt of a strut foot, two struts',
  arguments: twoArguments,
  unit: 'N',
  formula: 'slide over the bolts; the worst of both feet and every case',
  source: 'statics',
  example: twoExample(TWO_SHEAR),
  run: (...given: TwoGiven) => worst(twoStrutPulls(given), 'shear'),
});

export const twoFootBoltShareRecord = record({
  id: 'TWO_FOOT_BOLT_SHARE',
  title: 'Share of what a foot bolt bears, two struts',
  arguments: [...boltArguments, ...twoArguments],
  unit: '–',
  formula:
    '√((pull over strength)² + (shear over 0.6 × strength × packing factor)²); the worst of both feet and every case',
  source: 'AISC 360 Commentary J3; ISO 898-1; EN 1993-1-8, 3.6.1(12)',
  example: {
    ...twoExample(Math.hypot(TWO_TENSION / 1740, TWO_SHEAR / 1044), [10, 300, 10, 3]),
    source: 'by hand: the pull and shear of the two examples on 58.0 mm² at 30 MPa',
  },
  run: (diameter: number, strength: number, safety: number, packing: number, ...two: TwoGiven) =>
    shareOf(twoStrutPulls(two), [diameter, strength, safety, packing]),
});

// Four bolts 80 × 121 mm on the same face 50 mm to starboard, their middle 8 aft and 524 up; the pin 332 aft of it and 36
// above, the axis 50 further aft.
const ONE = [1000, 0.5, 20, 4, 80, 121, 40, 50, SLOPE, 0, 40, 50, 500, 390, 340, 50, 560] as const;
const ONE_TENSION = 340 / 4 + 284_000 / 160 + 15_200 / 200;
const ONE_SHEAR = Math.hypot(1000 / 4, 380 / 4 + 258_000 / 160);

export const oneFootBoltTensionRecord = record({
  id: 'ONE_FOOT_BOLT_TENSION',
  title: 'Pull on one bolt of a strut foot, single strut',
  arguments: oneArguments,
  unit: 'N',
  formula:
    'pull over the bolts, plus moment about the way up the face over ½ bolts × spacing, plus moment about the level line over ½ bolts × height (that lever over 1.21 with more than two bolts), sizes summed; the worse case',
  source: 'statics',
  example: {
    given: [...ONE],
    answer: ONE_TENSION,
    tolerance: 1e-9,
    source:
      'by hand: 340 N square on four; 1000 N turns by 284 000 N·mm up the face over 2 × 80; 500 and 100 N tip by 15 200 over 2 × 121/1.21',
  },
  run: (...given: OneGiven) => worst(oneStrutPulls(given), 'tension'),
});

export const oneFootBoltShearRecord = record({
  id: 'ONE_FOOT_BOLT_SHEAR',
  title: 'Shear on one bolt of a strut foot, single strut',
  arguments: oneArguments,
  unit: 'N',
  formula:
    '√((level force over the bolts)² + (force up the face over the bolts + twist over ½ bolts × spacing)²); the worse case',
  source: 'statics',
  example: {
    given: [...ONE],
    answer: ONE_SHEAR,
    tolerance: 1e-9,
    source: 'by hand: 1000/4 level; 380/4 up and a twist of 258 000 N·mm over 2 × 80',
  },
  run: (...given: OneGiven) => worst(oneStrutPulls(given), 'shear'),
});

export const oneFootBoltShareRecord = record({
  id: 'ONE_FOOT_BOLT_SHARE',
  title: 'Share of what a foot bolt bears, single strut',
  arguments: [...boltArguments, ...oneArguments],
  unit: '–',
  formula: '√((pull over strength)² + (shear over 0.6 × strength × packing factor)²); the worse case',
  source: 'AISC 360 Commentary J3; ISO 898-1; EN 1993-1-8, 3.6.1(12)',
  example: {
    given: [10, 300, 10, 3, ...ONE],
    answer: Math.hypot(ONE_TENSION / 1740, ONE_SHEAR / 1044),
    tolerance: 1e-9,
    source: 'by hand: the pull and shear of the two examples on 58.0 mm² at 30 MPa',
  },
  run: (diameter: number, strength: number, safety: number, packing: number, ...one: OneGiven) =>
    shareOf(oneStrutPulls(one), [diameter, strength, safety, packing]),
});
