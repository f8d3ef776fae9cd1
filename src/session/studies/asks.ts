import { inputNamed } from '../../plan/book.ts';
import { type Plan, readingOf, type StudySettings } from '../../plan/plan.ts';
import { errorsAmong } from '../../studies/drivers/varied.ts';
import type { DriversAsk } from '../../studies/drivers.ts';
import type { OddsAsk } from '../../studies/odds.ts';
import type { TurningAsk } from '../../studies/turning.ts';
import { following } from './left-out.ts';
import { variedCell } from './varied-cell.ts';
import { variedInputs } from './varied-inputs.ts';

type Settings = StudySettings['settings'];

/** Every draw of a plan starts here, so that the same plan gives the same numbers everywhere. */
export const SEED = 1;

/** Certainty of every interval that is shown. */
export const CERTAINTY = 0.95;

/** Draws in so many repeats: enough for an answer at once, and for closer intervals. */
const COARSE = { repeats: 16, points: 1024 };
const FINE = { repeats: 25, points: 4096 };

/** How far readings with one instrument share their error, as a plan's settings say: not at all unless told. */
export function shareIn({ share }: Settings): number {
  return typeof share === 'number' && share >= 0 && share <= 1 ? share : 0;
}

/** What moves the limits named, in a scenario of a plan. */
export const driversAsk = (
  plan: Plan,
  scenario: string | null,
  limits: readonly string[],
  settings: Settings,
): DriversAsk => ({
  scenario,
  inputs: variedInputs(plan, scenario),
  limits,
  share: shareIn(settings),
  seed: SEED,
});

/** How sure the owner may be, in a scenario of a plan. */
export const oddsAsk = (plan: Plan, scenario: string | null, settings: Settings): OddsAsk => ({
  scenario,
  errors: errorsAmong(variedInputs(plan, scenario)),
  follow: following(plan, scenario),
  share: shareIn(settings),
  seed: SEED,
  ...(settings['fine'] === true ? FINE : COARSE),
  certainty: CERTAINTY,
});

/** An input's turning values over its usual range. Throws a sentence for an input without one. */
export function turningAsk(plan: Plan, scenario: string | null, input: string): TurningAsk {
  const cell = variedCell(input, plan) ?? inputNamed(input);
  if (cell === undefined) throw new RangeError(`There is no input named ${input}.`);
  const { usual, type, only } = cell;
  if (usual === undefined || (type !== 'number' && type !== 'whole')) {
    throw new RangeError(`${cell.label} has no range to look for turning values in.`);
  }
  const own = plan.ownCells.find((it) => it.name === input);
  const value = own === undefined ? readingOf(plan, input, scenario)?.value : own.value;
  const present = typeof value === 'number' ? value : null;
  const [low, high] = usual;
  return {
    scenario,
    input,
    low: present === null ? low : Math.min(low, present),
    high: present === null ? high : Math.max(high, present),
    whole: type === 'whole',
    only,
    present,
  };
}
