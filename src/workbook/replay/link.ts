import { aggregateKernels } from './kernels/aggregates.ts';
import { arithmeticKernels } from './kernels/arithmetic.ts';
import { ruleKernel } from './kernels/by-rule.ts';
import { choiceKernels } from './kernels/choice.ts';
import { comparisonKernels } from './kernels/comparisons.ts';
import { functionKernels } from './kernels/functions.ts';
import { type Fast, inEights, type Kernel } from './kernels/kernel.ts';
import { libraryKernel } from './kernels/library.ts';
import { isTyped, type Lane } from './lanes.ts';
import type { GuardedStep, Program } from './program.ts';
import { sharedLanes } from './shared-lanes.ts';

const FAST: ReadonlyMap<string, Fast> = new Map(
  Object.entries({
    ...arithmeticKernels,
    ...comparisonKernels,
    ...choiceKernels,
    ...functionKernels,
    ...aggregateKernels,
  }),
);

/** Comparisons have a loop for texts; the other fast loops are for numbers and yes/no alone. */
const mayBeFast = (op: string, out: Lane, args: readonly Lane[]): boolean =>
  op in comparisonKernels || (isTyped(out.kind) && args.every(({ kind }) => isTyped(kind)));

/** A program made ready to run over blocks of points. */
export interface Linked {
  /** How many points a block holds at most. */
  readonly size: number;
  /** By slot; only those of inputs, of what is given and of what is wanted hold their own after a run. */
  readonly lanes: readonly Lane[];
  /** One for each step, in order. */
  readonly kernels: readonly Kernel[];
  /** Works everything out for the first `count` points of the block, whose inputs have been put in. */
  readonly run: Kernel;
}

function kernelOf({ op, args, out, guard }: GuardedStep, lanes: readonly Lane[], byRule: boolean): Kernel {
  const lane = lanes[out] as Lane;
  const given = args.map((slot) => lanes[slot] as Lane);
  if (byRule) return ruleKernel(op, lane, given);
  const condition = guard === undefined ? undefined : (lanes[guard.slot] as Lane);
  const asked =
    guard === undefined || condition === undefined || condition.any !== undefined
      ? undefined
      : { lane: condition, when: guard.when };
  const fast = mayBeFast(op, lane, given) ? FAST.get(op)?.(lane, given) : undefined;
  return fast ?? libraryKernel(op, lane, given, asked) ?? ruleKernel(op, lane, given);
}

/**
 * Links a program's steps to closures over its slots: no code is generated. `byRule` takes the plain rule for every
 * step in place of the loops written for speed, which tests compare with one another.
 */
export function link(program: Program, points = 128, byRule = false): Linked {
  const size = inEights(points);
  const lanes = sharedLanes(program, size);
  const kernels = program.steps.map((step) => kernelOf(step, lanes, byRule));
  return {
    size,
    lanes,
    kernels,
    run: (count) => {
      for (const kernel of kernels) kernel(count);
    },
  };
}
