import type { WorkGiven, WorkStep } from './step.ts';
import { closeSteps } from './work/close-steps.ts';
import { lowerSteps } from './work/lower-steps.ts';
import { upperSteps } from './work/upper-steps.ts';

/** The day's steps for the brackets and struts that the plan has, in their order. */
export const orderOfWork = (given: WorkGiven): readonly WorkStep[] => [
  ...lowerSteps(given),
  ...upperSteps(given),
  ...closeSteps(given),
];
