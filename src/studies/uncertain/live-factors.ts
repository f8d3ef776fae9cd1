import type { PointEvaluator } from '../points.ts';
import type { ErrorModel } from './error-model.ts';

/** Places of the factors that move some reading on which anything looked at can depend. */
export const liveFactors = ({ idle }: PointEvaluator, { errors, factors }: ErrorModel): number[] =>
  factors.flatMap(({ moves }, i) =>
    idle === undefined || moves.some((reading) => !idle.has(errors[reading]?.name ?? '')) ? [i] : [],
  );
