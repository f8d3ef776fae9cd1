import { engineEdit } from './engine.ts';
import { growth } from './growth.ts';
import { pageTimes } from './page.ts';
import { formulasOnly, wholePlan } from './replay.ts';
import { studyTimes } from './studies.ts';
import { sureness } from './sureness.ts';

// Measures side by side in one run and prints one JSON object. Nothing is asserted here.
const engine_edit_ms = engineEdit();
const whole_plan = wholePlan();
const formulas_only = formulasOnly();
const sweeps = growth();
const sure = sureness();
const studies = studyTimes();
const page = await pageTimes();
process.stdout.write(
  `${JSON.stringify({ engine_edit_ms, whole_plan, formulas_only, growth: sweeps, ...sure, ...studies, ...page }, null, 2)}\n`,
);
process.exit(0);
