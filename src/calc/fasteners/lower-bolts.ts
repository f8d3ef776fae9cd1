import { cos, sin } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { caseArguments, type LoadCase, loadCases } from '../loads/cases.ts';
import { type Argument, record } from '../record.ts';
import { type BoltGiven, boltArguments, boltShare } from './bolt-share.ts';

type LowerGiven = readonly [
  lower: number,
  upper: number,
  dragRatio: number,
  swing: number,
  standoff: number,
  armsMeet: number,
  armsMeetAside: number,
  spacing: number,
  slope: number,
  slip: number,
  flangeHeight: number,
];

const lowerArguments: readonly Argument[] = [
  { name: 'lower_reaction', unit: 'N', meaning: 'What the lower clamp holds' },
  { name: 'upper_reaction', unit: 'N', meaning: 'What the upper clamp holds' },
  ...caseArguments,
  { name: 'standoff', unit: 'mm', meaning: 'From the transom face to the shaft axis' },
  { name: 'arms_meet', unit: 'mm', meaning: 'Where the struts would meet, aft of the shaft' },
  { name: 'arms_meet_aside', unit: 'mm', meaning: 'Where the struts would meet, to starboard of the shaft' },
  { name: 'spacing', unit: 'mm', meaning: 'Between the lower bolts', above: 0 },
  { name: 'slope', unit: 'deg', meaning: "The transom's slope" },
  { name: 'clamp_slip', unit: 'N', meaning: 'Along the shaft at the clamps', least: 0 },
  { name: 'flange_height', unit: 'mm', meaning: "The lower flange's height", above: 0 },
];

/** Where the bracket's arguments begin when a bolt's come first. */
const AFTER_BOLT = 4;

/**
 * Level force on one bolt in a load case, N: its share of the bracket's moment about the vertical, and of the force fore
 * and aft. The upper clamp's reaction takes hold where the struts' lines cross, so it turns the shaft, and the clamps
 * hand that on to the bracket; it may help or hinder. What is given stands in a list from `at` on: taking it apart would
 * cost more than the sums.
 */
function leverPull({ sideways, foreAft }: LoadCase, given: readonly number[], at: number): number {
  const lower = given[at] as number;
  const upper = given[at + 1] as number;
  const turns = lower * (given[at + 4] as number);
  const armsMeet = given[at + 5] as number;
  const turn = Math.max(turns + upper * Math.max(0, armsMeet), -turns - upper * armsMeet);
  const moment = sideways * turn + upper * foreAft * Math.abs(given[at + 6] as number);
  return moment / (given[at + 7] as number) + 0.5 * lower * foreAft;
}

/** A raked face takes the moment about the vertical partly as pull, partly as twist in its own plane. */
function tensionIn(it: LoadCase, given: readonly number[], at: number): number {
  const slips = ((given[at + 9] as number) * (given[at + 4] as number)) / (given[at + 10] as number);
  return leverPull(it, given, at) * cos(given[at + 8] as number) + slips;
}

function shearIn(it: LoadCase, given: readonly number[], at: number): number {
  const along =
    leverPull(it, given, at) * Math.abs(sin(given[at + 8] as number)) + 0.5 * (given[at + 9] as number);
  const level = 0.5 * (given[at] as number) * it.sideways;
  return Math.sqrt(level * level + along * along);
}

/** Worst pull on one lower bolt, N. */
export function lowerBoltTension(...given: LowerGiven): number {
  const [stall, hardOver] = loadCases(given[2], given[3]);
  return Math.max(tensionIn(stall, given, 0), tensionIn(hardOver, given, 0));
}

/** Worst shear on one lower bolt, N. */
export function lowerBoltShear(...given: LowerGiven): number {
  const [stall, hardOver] = loadCases(given[2], given[3]);
  return Math.max(shearIn(stall, given, 0), shearIn(hardOver, given, 0));
}

/** Worst share of what a lower bolt bears, pull and shear of the same case together. */
export function lowerBoltShare(...given: readonly [...BoltGiven, ...LowerGiven]): Answer {
  const share = boltShare(given[0], given[1], given[2], given[3]);
  if (share instanceof NoAnswer) return share;
  const [stall, hardOver] = loadCases(given[6], given[7]);
  const at = AFTER_BOLT;
  return Math.max(
    share(tensionIn(stall, given, at), shearIn(stall, given, at)),
    share(tensionIn(hardOver, given, at), shearIn(hardOver, given, at)),
  );
}

const PULL =
  '(moment about the vertical over the bolt spacing + ½ lower reaction × fore-and-aft share) × cos(slope) + force along the shaft × standoff over flange height';
const SHEAR =
  '√((½ lower reaction × sideways share)² + ((moment over spacing + ½ lower reaction × fore-and-aft share) × sin(slope) + ½ force along the shaft)²)';

// A face at 60°, the brackets' lever 200 mm, the struts meeting 40 mm aft and 10 mm aside.
const SLOPED = [1000, 500, 0.2, 0, 200, 40, -10, 100, 60, 300, 150] as const;
const LEVER = (200_000 + 20_000 + 500 * 0.2 * 10) / 100 + 100;

export const lowerBoltTensionRecord = record({
  id: 'LOWER_BOLT_TENSION',
  title: 'Pull on one lower bolt',
  arguments: lowerArguments,
  unit: 'N',
  formula: `${PULL}; the worst`,
  source: 'statics',
  example: {
    given: [...SLOPED],
    answer: LEVER / 2 + 400,
    tolerance: 1e-9,
    source: 'by hand: (200 000 + 20 000 + 1000)/100 + 100 = 2310 N, half of it, and 300 × 200/150',
  },
  run: lowerBoltTension,
});

export const lowerBoltShearRecord = record({
  id: 'LOWER_BOLT_SHEAR',
  title: 'Shear on one lower bolt',
  arguments: lowerArguments,
  unit: 'N',
  formula: `${SHEAR}; the worst`,
  source: 'statics',
  example: {
    given: [...SLOPED],
    answer: Math.hypot(500, (LEVER * Math.sqrt(3)) / 2 + 150),
    tolerance: 1e-9,
    source: 'by hand: 500 N level; 2310 N × sin 60° and half of 300 N along the face',
  },
  run: lowerBoltShear,
});

export const lowerBoltShareRecord = record({
  id: 'LOWER_BOLT_SHARE',
  title: 'Share of what a lower bolt bears',
  arguments: [...boltArguments, ...lowerArguments],
  unit: '–',
  formula: '√((pull over strength)² + (shear over 0.6 × strength × packing factor)²); the worst case',
  source: 'AISC 360 Commentary J3; ISO 898-1; EN 1993-1-8, 3.6.1(12)',
  example: {
    given: [10, 300, 10, 3, ...SLOPED],
    answer: Math.hypot((LEVER / 2 + 400) / 1740, Math.hypot(500, (LEVER * Math.sqrt(3)) / 2 + 150) / 1044),
    tolerance: 1e-12,
    source: 'ISO 898-1: 58.0 mm² × 30 MPa = 1740 N, × 0.6 = 1044 N in shear; the two examples’ forces',
  },
  run: lowerBoltShare,
});
