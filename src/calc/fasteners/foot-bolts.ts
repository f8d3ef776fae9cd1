import { tan } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { caseArguments, loadCases } from '../loads/cases.ts';
import { type Argument, type Example, record } from '../record.ts';
import { normalAt } from '../struts/foot-pin.ts';
import { type PairPins, pairPinArguments, strutPair, worstForces } from '../struts/pair-forces.ts';
import { dot, length, minus, scaled, type Vector } from '../vector.ts';
import { type BoltGiven, boltArguments, worstShare } from './bolt-share.ts';

interface Pull {
  readonly tension: number;
  readonly shear: number;
}

const footArguments: readonly Argument[] = [
  { name: 'count', unit: '–', meaning: 'The bolts in a foot', above: 0 },
  { name: 'spacing', unit: 'mm', meaning: "The foot's bolt spacing", above: 0 },
  { name: 'standoff', unit: 'mm', meaning: 'The distance from the face to the hinge pin', least: 0 },
];

const reactionArguments: readonly Argument[] = [
  { name: 'upper_reaction', unit: 'N', meaning: 'What the upper clamp holds' },
  ...caseArguments,
];

const faceArguments: readonly Argument[] = [
  { name: 'port_y', unit: 'mm', meaning: "The port foot's distance to starboard" },
  { name: 'port_z', unit: 'mm', meaning: "The port foot's height" },
  { name: 'starboard_y', unit: 'mm', meaning: "The starboard foot's distance to starboard" },
  { name: 'starboard_z', unit: 'mm', meaning: "The starboard foot's height" },
  { name: 'rake', unit: 'deg', meaning: "The transom's rake" },
  { name: 'camber_radius', unit: 'mm', meaning: "The transom's camber radius", least: 0 },
];

type TwoGiven = readonly [
  reaction: number,
  drag: number,
  swing: number,
  count: number,
  spacing: number,
  standoff: number,
  portY: number,
  portZ: number,
  starboardY: number,
  starboardZ: number,
  rake: number,
  radius: number,
  ...pins: PairPins,
];

/** Where the pins stand among what is given. */
const PINS = 12;

/**
 * Pull and shear on one bolt of a foot whose strut brings it `force` N: a strut pulls square to the face and slides
 * along it. `arm` is the standoff over half the spacing.
 */
function footPull(force: number, along: Vector, normal: Vector, arm: number): Pull {
  const square = dot(along, normal);
  const shear = force * length(minus(along, scaled(normal, square)));
  return { tension: force * Math.abs(square) + shear * arm, shear };
}

/** Worst pull and shear on one bolt of each foot. Read by place: taking the list apart takes as long as the sums. */
function twoStrutPulls(given: TwoGiven): readonly [Pull, Pull] | NoAnswer {
  const pair = strutPair(given, PINS);
  if (pair instanceof NoAnswer) return pair;
  const forces = worstForces(pair, given[0], given[1], given[2]);
  const [count, spacing, standoff] = [given[3], given[4], given[5]];
  const [slope, radius] = [tan(given[10]), given[11]];
  const arm = standoff / (0.5 * spacing);
  return [
    footPull(forces.port / count, pair.port.along, normalAt(given[6], slope, radius), arm),
    footPull(forces.starboard / count, pair.starboard.along, normalAt(given[8], slope, radius), arm),
  ];
}

type OneGiven = readonly [
  reaction: number,
  drag: number,
  swing: number,
  count: number,
  spacing: number,
  standoff: number,
  pinToPin: number,
  pinForward: number,
];

const oneArguments: readonly Argument[] = [
  ...reactionArguments,
  ...footArguments,
  { name: 'pin_to_pin', unit: 'mm', meaning: "The strut's length from pin to pin", least: 0 },
  { name: 'pin_forward', unit: 'mm', meaning: 'The clamp pin ahead of the shaft axis' },
];

/** Pull and shear on the bolts of a single strut's foot: its rigid hinges hand the sideways moment to the foot. */
const oneStrutPulls = (
  ...[reaction, drag, swing, count, spacing, standoff, pinToPin, forward]: OneGiven
): Pull[] =>
  loadCases(drag, swing).map(({ sideways, foreAft }) => ({
    tension:
      (reaction * sideways * Math.abs(pinToPin + forward + standoff)) / (0.5 * count * spacing) +
      (reaction * foreAft) / count,
    shear: (reaction * sideways) / count,
  }));

const worst = (pulls: readonly Pull[] | NoAnswer, of: keyof Pull): Answer =>
  pulls instanceof NoAnswer ? pulls : pulls.reduce((most, it) => Math.max(most, it[of]), 0);

const shareOf = (pulls: readonly Pull[] | NoAnswer, bolt: BoltGiven): Answer =>
  pulls instanceof NoAnswer ? pulls : worstShare(bolt, pulls);

const twoArguments: readonly Argument[] = [
  ...reactionArguments,
  ...footArguments,
  ...faceArguments,
  ...pairPinArguments,
];

// Struts square to an upright face, 1000 N fore and aft shared by both feet of two bolts: no slide but from sideways.
const SQUARE = [1000, 0, 90, 2, 80, 40, 0, 0, 0, 0, 0, 0] as const;
const SLANTED = [400, -300, 300, 0, 0, -600, 0, 0, 600, 0] as const;

const twoExample = (answer: number, given: readonly number[] = []): Example => ({
  given: [...SQUARE.slice(0, 3), ...SQUARE.slice(3, 12), ...SLANTED, ...given],
  answer,
  tolerance: 1e-9,
  source: 'by hand: 3-4-5 struts; sideways 1000 N is 833.3 N in each, 666.7 square and 500 along the face',
});

export const twoFootBoltTensionRecord = record({
  id: 'TWO_FOOT_BOLT_TENSION',
  title: 'Pull on one bolt of a strut foot, two struts',
  arguments: twoArguments,
  unit: 'N',
  formula:
    'pull over the bolts plus slide × standoff over ½ bolts × spacing; the worst of both feet and every case',
  source: 'statics',
  example: twoExample(1000 / 3 + (500 * 40) / 80),
  run: (...given: TwoGiven) => worst(twoStrutPulls(given), 'tension'),
});

export const twoFootBoltShearRecord = record({
  id: 'TWO_FOOT_BOLT_SHEAR',
  title: 'Shear on one bolt of a strut foot, two struts',
  arguments: twoArguments,
  unit: 'N',
  formula: 'slide over the bolts; the worst of both feet and every case',
  source: 'statics',
  example: twoExample(250),
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
    given: [10, 300, 10, 0, ...SQUARE, ...SLANTED],
    answer: Math.hypot((1000 / 3 + 250) / 1740, 250 / 1044),
    tolerance: 1e-9,
    source: 'by hand: the pull and shear of the two examples on 58.0 mm² at 30 MPa',
  },
  run: (diameter: number, strength: number, safety: number, packing: number, ...two: TwoGiven) =>
    shareOf(twoStrutPulls(two), [diameter, strength, safety, packing]),
});

const ONE = [1000, 0.5, 0, 2, 80, 40, 300, 60] as const;

export const oneFootBoltTensionRecord = record({
  id: 'ONE_FOOT_BOLT_TENSION',
  title: 'Pull on one bolt of a strut foot, single strut',
  arguments: oneArguments,
  unit: 'N',
  formula:
    'sideways force × (length + pin forward + standoff) over ½ bolts × spacing, plus fore-and-aft force over the bolts; the worse case',
  source: 'statics',
  example: { given: [...ONE], answer: 5250, tolerance: 1e-9, source: 'by hand: 1000 × 400/80 + 500/2' },
  run: (...given: OneGiven) => worst(oneStrutPulls(...given), 'tension'),
});

export const oneFootBoltShearRecord = record({
  id: 'ONE_FOOT_BOLT_SHEAR',
  title: 'Shear on one bolt of a strut foot, single strut',
  arguments: oneArguments,
  unit: 'N',
  formula: 'sideways force over the bolts; the worse case',
  source: 'statics',
  example: { given: [...ONE], answer: 500, tolerance: 1e-9, source: 'by hand: 1000/2' },
  run: (...given: OneGiven) => worst(oneStrutPulls(...given), 'shear'),
});

export const oneFootBoltShareRecord = record({
  id: 'ONE_FOOT_BOLT_SHARE',
  title: 'Share of what a foot bolt bears, single strut',
  arguments: [...boltArguments, ...oneArguments],
  unit: '–',
  formula: '√((pull over strength)² + (shear over 0.6 × strength × packing factor)²); the worse case',
  source: 'AISC 360 Commentary J3; ISO 898-1; EN 1993-1-8, 3.6.1(12)',
  example: {
    given: [10, 300, 10, 0, ...ONE],
    answer: Math.hypot(5250 / 1740, 500 / 1044),
    tolerance: 1e-9,
    source: 'by hand: the pull and shear of the two examples on 58.0 mm² at 30 MPa',
  },
  run: (diameter: number, strength: number, safety: number, packing: number, ...one: OneGiven) =>
    shareOf(oneStrutPulls(...one), [diameter, strength, safety, packing]),
});
