import { NoAnswer } from '../calc/answer.ts';
import { inputNamed } from '../plan/book.ts';
import { CAUTION } from '../plan/caution.ts';
import type { Plan, Units } from '../plan/plan.ts';
import { formatValue } from '../units/format-value.ts';
import { stands } from './bob.ts';
import type { WorkStep } from './step.ts';

export interface Entry {
  readonly name: string;
  readonly label: string;
  readonly lines?: number;
}

/** What somebody writes down when the gear is handed over. */
export const HANDOVER_ENTRIES: readonly Entry[] = [
  { name: 'fitted_by', label: 'Fitted by' },
  { name: 'fitted_on', label: 'Date' },
  { name: 'where', label: 'Where, and afloat or ashore' },
  { name: 'gear', label: 'Gear: what stands on its plate, and which manual' },
  { name: 'bolts', label: 'Bolts, plates and sealant as used', lines: 2 },
  { name: 'struts_cut', label: 'Strut lengths as cut' },
  { name: 'torque', label: 'Torque as tightened, and from where the figure comes' },
  { name: 'remarks', label: 'What differs from the plan, and why', lines: 3 },
  { name: 'handed_to', label: 'Handed over to' },
];

/** What remains to be looked at, and when. Common practice, no source. */
export const DUE: readonly (Entry & { readonly what: string })[] = [
  {
    name: 'due_day',
    label: 'After a day',
    what: 'Tighten every hull bolt again. Look inside for drops.',
  },
  {
    name: 'due_first_sail',
    label: 'After the first sail',
    what: 'Hang the bob: the shaft stands as it stood. Clamps have not slipped on the tubes, hinges do not rattle, no drop inside, no crack in the gelcoat round a flange.',
  },
  {
    name: 'due_week',
    label: 'After a week',
    what: 'Tighten every bolt again, hull first, shaft last. Look at collar, pin and line.',
  },
  {
    name: 'due_month',
    label: 'After a month',
    what: 'Tighten once more: plastic goes on creeping. Measure the gap of the rudders hard over. Look at every plate inside for crushed or wet laminate.',
  },
];

const NOTHING = 'not written down';

export interface HandoverGiven {
  readonly plan: Plan;
  readonly units: Units;
  readonly steps: readonly WorkStep[];
  /** A cell's value as planned and as fitted. */
  readonly planned: (name: string) => number | boolean | string | null;
}

/** The record as lines of plain text; a line that ends in a colon heads those under it. */
export function handoverLines({ plan, units, steps, planned }: HandoverGiven): readonly string[] {
  const { fitted, handover } = plan.fit;
  const entry = ({ name, label }: Entry): string => `${label}: ${handover.get(name) ?? NOTHING}`;
  const shown = (name: string, value: number | boolean | string | null): string =>
    formatValue(value, inputNamed(name)?.unit ?? '–', { unit: units });
  const by = (who?: string, when?: string): string => {
    const words = [who, when].filter((it) => it !== undefined && it !== '');
    return words.length === 0 ? '' : ` (${words.join(', ')})`;
  };
  const done = new Map(plan.fit.steps.map((it) => [it.step, it]));
  const lean = stands(plan.fit.steps);
  const open = steps.filter((it) => done.get(it.name)?.done !== true);
  return [
    `Handover record: ${plan.title}${plan.active === null ? '' : `, ${plan.active}`}`,
    '',
    ...HANDOVER_ENTRIES.map(entry),
    '',
    'As fitted:',
    ...(fitted.size === 0 ? ['Nothing was read in the place of a planned value.'] : []),
    ...[...fitted].map(
      ([name, { value, who, when }]) =>
        `${inputNamed(name)?.label ?? name}: ${shown(name, value)}, planned ${shown(name, planned(name))}${by(who, when)}`,
    ),
    lean instanceof NoAnswer
      ? lean.why
      : `The shaft leans ${formatValue(lean.boat.aft, 'deg', { unit: units })} aft and ${formatValue(lean.boat.side, 'deg', { unit: units })} to starboard in the boat${lean.lieRead ? ', list and trim taken out' : '; list and trim were not both read'}.`,
    '',
    'Steps done:',
    ...steps.flatMap(({ name, title, reading }) => {
      const row = done.get(name);
      if (row === undefined || !row.done) return [];
      const read =
        row.value === undefined || reading === undefined
          ? ''
          : `; ${reading.what.toLowerCase()} ${formatValue(row.value, reading.unit, { unit: units })}`;
      return [`${title}${read}${by(row.who, row.when)}`];
    }),
    ...(open.length === 0
      ? ['All steps are ticked.']
      : [`Not ticked: ${open.map((it) => it.title).join('; ')}.`]),
    '',
    'Still to be looked at:',
    ...DUE.map(({ name, label, what }) => `${label}: ${what} Done: ${handover.get(name) ?? 'not yet'}.`),
    '',
    CAUTION,
  ];
}
