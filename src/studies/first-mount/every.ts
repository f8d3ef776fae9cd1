import type { Progress } from '../study.ts';
import type { MADE, Readings } from './ask.ts';
import type { Bench, Judged, Seen, Watch } from './bench.ts';
import { footHeight, levelHeight } from './feet.ts';
import { footRange, highestUpper, type Sketch } from './rule.ts';
import type { Stack } from './stacks.ts';

/** The grid of both brackets' heights, mm. */
const GRID = 10;
/** Beyond what the drive unit leaves room for every so many heights are enough, and with stacks thicker than allowed. */
const COARSE = 5;
/** Mounts judged together. */
const TOGETHER = 512;
/** Where the shaft's foot is tried in its range: its ends and the middle, for all that asks something of it rises or falls. */
const FEET = [0, 0.5, 1];
/** How the struts are tried wherever the rest of a mount holds: spreads, and feet lower than level, mm. */
const SPREADS = [0, 0.35, 0.65, 1];
const DROPS = [0, 60, -60, 150];

/** Choices that the struts alone make: the limits on which none of them has a hold are judged before struts are drawn. */
export const OF_STRUTS: readonly (typeof MADE)[number][] = [
  'strut_count',
  'port_foot_y',
  'port_foot_height',
  'starboard_foot_y',
  'starboard_foot_height',
  'single_foot_y',
  'single_foot_height',
];

/** A bench, and what hears of all that it judges. */
export interface Heard {
  readonly bench: Bench;
  readonly watch: Watch;
}

export interface EveryAsk {
  readonly readings: Readings;
  readonly stacks: readonly Stack[];
  /** Stacks thicker than allowed: they only tell whether that is what stands in the way. */
  readonly thicker: readonly Stack[];
  /** Judges mounts without their struts, by the limits on which those have no hold. */
  readonly frames: Heard;
  /** Judges whole mounts. */
  readonly mounts: Heard;
}

function heights(low: number, high: number, grid = GRID): number[] {
  const first = Math.ceil(low / grid);
  return Array.from(
    { length: Math.max(0, Math.floor(high / grid) - first + 1) },
    (_, n) => (first + n) * grid,
  );
}

/** The upper bracket's heights over one lower bracket, wherever its clamp is on the tube. */
function uppersOver(lower: number, by: Readings): number[] {
  const highest = Math.max(lower, highestUpper(lower, by) + 2 * GRID);
  return [
    ...heights(lower + GRID, highest),
    ...heights(highest + GRID, highest + by.shaft_length / 2, COARSE * GRID),
  ];
}

const isCoarse = (height: number): boolean => Math.round(height / GRID) % COARSE === 0;

/** Mounts by the rule over one lower bracket, their struts left open. */
function framesOver(lower: number, { readings, stacks, thicker }: EveryAsk): Sketch[] {
  return uppersOver(lower, readings).flatMap((upper) => {
    const [low, high] = footRange({ lower, upper }, readings);
    const packed = isCoarse(lower) && isCoarse(upper) ? [...stacks, ...thicker] : stacks;
    return packed.flatMap((stack) =>
      (low < high ? FEET : [0]).map(
        (foot): Sketch => ({ struts: 2, stack, lower, upper, foot, spread: 0.5, drop: 0 }),
      ),
    );
  });
}

/** The struts that are tried on one mount; a drop that the face does not let be is tried once. */
function strutted(frame: Sketch, by: Readings): Sketch[] {
  const level = levelHeight(frame.upper, by);
  const drops = new Map(DROPS.map((drop) => [Math.round(footHeight(level - drop, by)), drop]));
  return [...drops.values()].flatMap((drop) => [
    ...SPREADS.map((spread): Sketch => ({ ...frame, struts: 2, spread, drop })),
    { ...frame, struts: 1, drop },
  ]);
}

const holdsAt = ({ failing, score }: Seen, n: number): boolean =>
  score[n] !== Number.NEGATIVE_INFINITY && failing.every((word) => word[n] === 0);

/** Judges many mounts, and yields those at which every limit holds, a round at a time. */
function* holding(all: readonly Sketch[], { bench, watch }: Heard): Generator<Judged[], void, void> {
  for (let from = 0; from < all.length; from += TOGETHER) {
    const seen = bench.judge(all.slice(from, from + TOGETHER));
    watch(seen);
    const found: Judged[] = [];
    for (let n = 0; n < seen.count; n++) if (holdsAt(seen, n)) found.push(seen.at(n));
    yield found;
  }
}

/**
 * Looks at every stack of shims and both bracket heights on a 10 mm grid, the shaft's foot and the struts' feet following
 * by the rule, until a mount keeps every limit. Gives back the mount that does; nothing when none does.
 */
export function* every(ask: EveryAsk): Generator<Progress, Judged | undefined, void> {
  const lowers = heights(ask.readings.transom_bottom, ask.readings.transom_top);
  for (const [at, lower] of lowers.entries()) {
    for (const frames of holding(framesOver(lower, ask), ask.frames)) {
      for (const [holds] of holding(
        frames.flatMap((it) => strutted(it.sketch, ask.readings)),
        ask.mounts,
      )) {
        if (holds !== undefined) return holds;
        yield { done: at, of: lowers.length };
      }
      yield { done: at, of: lowers.length };
    }
  }
  return undefined;
}
