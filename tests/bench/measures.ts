import { demoPlan } from '../studies/plan-points.ts';
import { engineEdit } from './engine.ts';
import { growth } from './growth.ts';
import { formulasOnly, wholePlan } from './replay.ts';
import { studyTimes } from './studies.ts';
import { sureness } from './sureness.ts';

/** All that is measured without a browser. */
export const measures = (): Record<string, unknown> => ({
  engine_edit_ms: engineEdit(),
  whole_plan: wholePlan(),
  formulas_only: formulasOnly(),
  growth: growth(),
  ...sureness(demoPlan()),
  ...studyTimes(demoPlan()),
});
