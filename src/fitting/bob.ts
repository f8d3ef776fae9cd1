import { NoAnswer } from '../calc/answer.ts';
import { bobLean } from '../calc/fit/bob-lean.ts';
import { type Leans, levelledLeans } from '../calc/fit/levelled-lean.ts';
import type { StepDone, Units } from '../plan/plan.ts';
import { formatValue } from '../units/format-value.ts';

/** A reading taken to find how the shaft leans. Kept beside the steps, under its name. */
export interface BobReading {
  readonly name: string;
  readonly label: string;
  readonly unit: 'mm' | 'deg';
  readonly help: string;
  /** How the boat lies: 0 until it is read. */
  readonly isLie?: true;
}

export const BOB_READINGS: readonly BobReading[] = [
  {
    name: 'bob_apart',
    label: 'Between the two marks',
    unit: 'mm',
    help: 'Measured plumb, from the mark at the upper clamp down to the one at the lower.',
  },
  {
    name: 'bob_aft_top',
    label: 'Bob forward of the tube: line to tube, top',
    unit: 'mm',
    help: 'Measured level, from the line aft to the tube, at the upper mark.',
  },
  {
    name: 'bob_aft_foot',
    label: 'Line to tube, below',
    unit: 'mm',
    help: 'The same at the lower mark.',
  },
  {
    name: 'bob_side_top',
    label: 'Bob to port of the tube: line to tube, top',
    unit: 'mm',
    help: 'Measured level, from the line to starboard to the tube, at the upper mark.',
  },
  {
    name: 'bob_side_foot',
    label: 'Line to tube, below',
    unit: 'mm',
    help: 'The same at the lower mark.',
  },
  {
    name: 'level_aft',
    label: 'Or a level on the tube, fore and aft',
    unit: 'deg',
    help: 'Plus when the top is further aft. Used where the bob was not read.',
  },
  {
    name: 'level_side',
    label: 'Or a level on the tube, to the side',
    unit: 'deg',
    help: 'Plus when the top is further to starboard. Used where the bob was not read.',
  },
  {
    name: 'lie_list',
    label: 'List of the boat at the time',
    unit: 'deg',
    help: 'On a known athwartships line, such as the cockpit sole; plus when starboard is lower.',
    isLie: true,
  },
  {
    name: 'lie_trim',
    label: 'Trim of the boat at the time',
    unit: 'deg',
    help: 'From the waterline marks; plus when the stern is deeper than as the boat sails.',
    isLie: true,
  },
];

export interface Stands {
  /** Against gravity. */
  readonly seen: Leans;
  /** In the boat, list and trim taken out. */
  readonly boat: Leans;
  /** Whether list and trim were read; else they are taken as 0. */
  readonly lieRead: boolean;
}

/** How the shaft leans, from what was read, or what is still to be read. */
export function stands(steps: readonly StepDone[]): Stands | NoAnswer {
  const read = (name: string): number | undefined => steps.find((it) => it.step === name)?.value;
  const apart = read('bob_apart');
  const lean = (way: 'aft' | 'side'): number | undefined => {
    const [top, foot] = [read(`bob_${way}_top`), read(`bob_${way}_foot`)];
    if (top === undefined || foot === undefined || apart === undefined) return read(`level_${way}`);
    return apart > 0 ? bobLean(top, foot, apart) : undefined;
  };
  if (apart !== undefined && !(apart > 0)) {
    return new NoAnswer('The distance between the two marks must be above 0 to give a lean.');
  }
  const [aft, side] = [lean('aft'), lean('side')];
  if (aft === undefined || side === undefined) {
    const words = aft === undefined ? 'fore and aft' : 'to the side';
    return new NoAnswer(
      `No answer for the lean ${words}: read the bob top and bottom with the distance between, or a level on the tube.`,
    );
  }
  const [list, trim] = [read('lie_list'), read('lie_trim')];
  const seen = { aft, side };
  return {
    seen,
    boat: levelledLeans(seen, { list: list ?? 0, trim: trim ?? 0 }),
    lieRead: list !== undefined && trim !== undefined,
  };
}

/** `0.6° to port`, with the sign as a word. */
export const leanWay = (value: number, way: keyof Leans, units: Units): string => {
  const words = way === 'aft' ? (['aft', 'forward'] as const) : (['to starboard', 'to port'] as const);
  return `${formatValue(Math.abs(value), 'deg', { unit: units })} ${value < 0 ? words[1] : words[0]}`;
};

/** Both leans, joined. */
export const leanWords = ({ aft, side }: Leans, units: Units): string =>
  `${leanWay(aft, 'aft', units)} and ${leanWay(side, 'side', units)}`;
