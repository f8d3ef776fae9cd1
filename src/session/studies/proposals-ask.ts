import { inputs, limitCells } from '../../plan/book.ts';
import { type Plan, readingOf, type Value } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { candidates } from '../../studies/candidates.ts';
import { type Freed, inputsOf, type Loosened, type ProposalsAsk } from '../../studies/proposals/ask.ts';
import { nextStep, type Step } from '../../units/next-step.ts';
import { BOUNDS, deciding } from '../remedy-ask.ts';
import { CERTAINTY, SEED, shareIn } from './asks.ts';
import { type FreeChoice, freedAmong } from './free-choices.ts';
import { variedInputs } from './varied-inputs.ts';

/** Mounts looked at in one search. */
export const EVALUATIONS = 60_000;
/** Values tried of a bound or gear value that might be given way on. */
const TRIED = 25;
/** Measures of a part that another part could have; strengths, loads and factors are nobody's to choose. */
const PART_UNITS: ReadonlySet<string> = new Set(['mm', 'deg', 'mm²']);

interface Asked {
  readonly plan: Plan;
  readonly scenario: string | null;
  /** Names of the choices that are freed. */
  readonly free: readonly string[];
  /** Values of the scenario asked about. */
  readonly value: (name: string) => Value;
  /** Which names each formula uses. */
  readonly uses: ReadonlyMap<string, readonly string[]>;
  /** An input's step in the units shown. */
  readonly stepOf: (cell: InputCell) => Step;
}

const numberOf = (value: Value | undefined): number => (typeof value === 'number' ? value : Number.NaN);

function freedOf({ name, moves, cell }: FreeChoice, { value, stepOf }: Asked): Freed {
  const present = numberOf(value(cell.name));
  const [low, high] = cell.usual ?? [present, present];
  const whole = cell.type === 'whole';
  const from = Number.isNaN(present) ? low : present;
  const choice = { name, present: from, low, high, step: stepOf(cell), counts: whole, only: cell.only };
  return {
    name,
    moves,
    whole,
    values: [...candidates(choice, -1).reverse(), from, ...candidates(choice, 1)],
  };
}

/** The limits that follow from each input. */
function limitsBy({ plan, uses }: Asked): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const limit of [...limitCells, ...plan.limits]) {
    for (const name of deciding(limit.name, plan, uses)) {
      const known = found.get(name);
      if (known === undefined) found.set(name, [limit.name]);
      else known.push(limit.name);
    }
  }
  return found;
}

function loosenedOf(cell: InputCell, limits: readonly string[], { value, stepOf }: Asked): Loosened[] {
  const present = value(cell.name);
  const isPart = cell.kind === 'input' && cell.where === 'manual' && PART_UNITS.has(cell.unit);
  if (typeof present !== 'number' || cell.usual === undefined) return [];
  if (!BOUNDS.has(cell.name) && !isPart) return [];
  const [low, high] = cell.usual;
  const spread = Array.from({ length: TRIED }, (_, i) => low + ((high - low) * i) / (TRIED - 1));
  const settled = cell.only ?? spread.map((it) => nextStep(it, stepOf(cell), 1));
  const values = [...new Set(settled)].filter((it) => it >= low && it <= high && it !== present);
  if (values.length === 0 || high <= low || limits.length === 0) return [];
  return [{ name: cell.name, present, values, span: high - low, limits }];
}

/** A search for proposals over the choices that are freed, in a scenario of a plan. */
export function proposalsAsk(asked: Asked): ProposalsAsk {
  const { plan, scenario, free, value } = asked;
  const freed = freedAmong(plan, free).map((it) => freedOf(it, asked));
  const moving = inputsOf({ freed });
  const follow = limitsBy(asked);
  return {
    scenario,
    freed,
    present: moving.map((name) => numberOf(value(name))),
    scenarios: plan.scenarios
      .filter((it) => it.name !== scenario)
      .map(({ name }) => ({
        name,
        values: moving.map((input) => numberOf(readingOf(plan, input, name)?.value)),
        varied: variedInputs(plan, name),
      })),
    shims: { input: 'shim_count', present: numberOf(value('shim_count')) },
    bolts: ['lower_bolt_length', 'foot_bolt_length'],
    loosened: inputs
      .filter((cell) => !moving.includes(cell.name))
      .flatMap((cell) => loosenedOf(cell, follow.get(cell.name) ?? [], asked)),
    readings: {
      varied: variedInputs(plan, scenario),
      share: shareIn(plan.studies.find((it) => it.study === 'odds')?.settings ?? {}),
      certainty: CERTAINTY,
    },
    seed: SEED,
    evaluations: EVALUATIONS,
  };
}
