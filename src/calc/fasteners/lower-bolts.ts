import { cos } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { caseArguments, type LoadCase, loadCases } from '../loads/cases.ts';
import { type Argument, record } from '../record.ts';
import { type BoltGiven, boltArguments, boltShare } from './bolt-share.ts';

const lowerArguments: readonly Argument[] = [
  { name: 'lower_reaction', unit: 'N', meaning: 'What the lower clamp holds' },
  { name: 'upper_reaction', unit: 'N', meaning: 'What the upper clamp holds' },
  ...caseArguments,
  { name: 'standoff', unit: 'mm', meaning: 'From the transom face to the shaft axis' },
  { name: 'arms_meet', unit: 'mm', meaning: 'Where the struts would meet, aft of the shaft' },
  { name: 'spacing', unit: 'mm', meaning: 'Between the lower bolts', above: 0 },
  { name: 'slope', unit: 'deg', meaning: "The transom's slope" },
];

/** Pull on one lower bolt in a load case, N. */
const tensionIn = (
  { sideways, foreAft }: LoadCase,
  lower: number,
  upper: number,
  standoff: number,
  armsMeet: number,
  spacing: number,
  slope: number,
): number =>
  ((lower * sideways * standoff + upper * sideways * Math.max(0, armsMeet)) / spacing +
    0.5 * lower * foreAft) /
  cos(slope);

const shearIn = ({ sideways }: LoadCase, lower: number): number => 0.5 * lower * sideways;

/** Worst pull on one lower bolt, N. */
export function lowerBoltTension(
  lower: number,
  upper: number,
  dragRatio: number,
  swing: number,
  standoff: number,
  armsMeet: number,
  spacing: number,
  slope: number,
): number {
  const [stall, hardOver] = loadCases(dragRatio, swing);
  return Math.max(
    tensionIn(stall, lower, upper, standoff, armsMeet, spacing, slope),
    tensionIn(hardOver, lower, upper, standoff, armsMeet, spacing, slope),
  );
}

/** Worst shear on one lower bolt, N. */
export function lowerBoltShear(lower: number, dragRatio: number, swing: number): number {
  const [stall, hardOver] = loadCases(dragRatio, swing);
  return Math.max(shearIn(stall, lower), shearIn(hardOver, lower));
}

/** Worst share of what a lower bolt bears, pull and shear of the same case together. */
export function lowerBoltShare(
  lower: number,
  upper: number,
  dragRatio: number,
  swing: number,
  standoff: number,
  armsMeet: number,
  spacing: number,
  slope: number,
  ...bolt: BoltGiven
): Answer {
  const share = boltShare(...bolt);
  if (share instanceof NoAnswer) return share;
  const [stall, hardOver] = loadCases(dragRatio, swing);
  return Math.max(
    share(tensionIn(stall, lower, upper, standoff, armsMeet, spacing, slope), shearIn(stall, lower)),
    share(tensionIn(hardOver, lower, upper, standoff, armsMeet, spacing, slope), shearIn(hardOver, lower)),
  );
}

const FORMULA =
  '((lower reaction × standoff + upper reaction × where the arms meet) × sideways share over bolt spacing + ½ lower reaction × fore-and-aft share) over cos(slope)';

export const lowerBoltTensionRecord = record({
  id: 'LOWER_BOLT_TENSION',
  title: 'Pull on one lower bolt',
  arguments: lowerArguments,
  unit: 'N',
  formula: `${FORMULA}; the worst`,
  source: 'statics',
  example: {
    given: [1000, 500, 0.2, 0, 200, 40, 100, 60],
    answer: 4600,
    tolerance: 1e-9,
    source: 'by hand: (200 000 + 20 000)/100 + 100 = 2300, over ½',
  },
  run: lowerBoltTension,
});

export const lowerBoltShearRecord = record({
  id: 'LOWER_BOLT_SHEAR',
  title: 'Shear on one lower bolt',
  arguments: [{ name: 'lower_reaction', unit: 'N', meaning: 'What the lower clamp holds' }, ...caseArguments],
  unit: 'N',
  formula: '½ lower reaction × sideways share; the worst',
  source: 'statics',
  example: {
    given: [1000, 0.2, 45],
    answer: 500,
    tolerance: 1e-9,
    source: 'by hand: at stall the whole force is sideways',
  },
  run: lowerBoltShear,
});

export const lowerBoltShareRecord = record({
  id: 'LOWER_BOLT_SHARE',
  title: 'Share of what a lower bolt bears',
  arguments: [...lowerArguments, ...boltArguments],
  unit: '–',
  formula: '√((pull over strength)² + (shear over 0.6 × strength × packing factor)²); the worst case',
  source: 'AISC 360 Commentary J3; ISO 898-1; EN 1993-1-8, 3.6.1(12)',
  example: {
    given: [1740, 0, 0, 0, 0, 0, 100, 0, 10, 300, 10, 0],
    answer: 870 / 1044,
    tolerance: 1e-12,
    source: 'ISO 898-1: 58.0 mm² × 30 MPa = 1740 N, × 0.6 = 1044 N in shear, against 870 N',
  },
  run: lowerBoltShare,
});
