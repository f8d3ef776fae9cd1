import { NoAnswer } from '../calc/answer.ts';
import { inputNamed } from '../plan/book.ts';
import { CAUTION } from '../plan/caution.ts';
import type { CellName } from '../plan/names.ts';
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
  { name: 'remarks', label: 'What differs from the plan, and why', lines: 2 },
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
  readonly planned: (name: CellName) => number | boolean | string | null;
}

/** One piece of the record; an entry without a value waits for somebody's hand. */
export type RecordPart =
  | { readonly kind: 'title' | 'heading' | 'text'; readonly text: string }
  | {
      readonly kind: 'entry';
      readonly label: string;
      readonly value: string | undefined;
      readonly lines: number;
    }
  | {
      readonly kind: 'due';
      readonly label: string;
      readonly what: string;
      readonly value: string | undefined;
    };

const text = (words: string): RecordPart => ({ kind: 'text', text: words });
const heading = (words: string): RecordPart => ({ kind: 'heading', text: words });

/** The record in its order. */
export function handoverRecord({ plan, units, steps, planned }: HandoverGiven): readonly RecordPart[] {
  const { fitted, handover } = plan.fit;
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
    {
      kind: 'title',
      text: `Handover record: ${plan.title}${plan.active === null ? '' : `, ${plan.active}`}`,
    },
    ...HANDOVER_ENTRIES.map(
      ({ name, label, lines }): RecordPart => ({
        kind: 'entry',
        label,
        value: handover.get(name),
        lines: lines ?? 1,
      }),
    ),
    heading('As fitted'),
    ...(fitted.size === 0 ? [text('Nothing was read in the place of a planned value.')] : []),
    ...[...fitted].map(([name, { value, who, when }]) =>
      text(
        `${inputNamed(name)?.label ?? name}: ${shown(name, value)}, planned ${shown(name, planned(name as CellName))}${by(who, when)}`,
      ),
    ),
    text(
      lean instanceof NoAnswer
        ? lean.why
        : `The shaft leans ${formatValue(lean.boat.aft, 'deg', { unit: units })} aft and ${formatValue(lean.boat.side, 'deg', { unit: units })} to starboard in the boat${lean.lieRead ? ', list and trim taken out' : '; list and trim were not both read'}.`,
    ),
    heading('Steps done'),
    ...steps.flatMap(({ name, title, reading }) => {
      const row = done.get(name);
      if (row === undefined || !row.done) return [];
      const read =
        row.value === undefined || reading === undefined
          ? ''
          : `; ${reading.what.toLowerCase()} ${formatValue(row.value, reading.unit, { unit: units })}`;
      return [text(`${title}${read}${by(row.who, row.when)}`)];
    }),
    text(
      open.length === 0
        ? 'All steps are ticked.'
        : open.length === steps.length
          ? 'No step is ticked.'
          : `Not ticked: ${open.map((it) => it.title).join('; ')}.`,
    ),
    heading('Still to be looked at'),
    ...DUE.map(
      ({ name, label, what }): RecordPart => ({ kind: 'due', label, what, value: handover.get(name) }),
    ),
    text(CAUTION),
  ];
}

function linesOf(part: RecordPart): readonly string[] {
  switch (part.kind) {
    case 'heading':
      return ['', `${part.text}:`];
    case 'entry':
      return [`${part.label}: ${part.value ?? NOTHING}`];
    case 'due':
      return [`${part.label}: ${part.what} Done: ${part.value ?? 'not yet'}.`];
    default:
      return [part.text];
  }
}

/** The record as lines of plain text; a line that ends in a colon heads those under it. */
export function handoverLines(given: HandoverGiven): readonly string[] {
  const [title = '', ...rest] = handoverRecord(given).flatMap(linesOf);
  const last = rest.pop() ?? '';
  return [title, '', ...rest, '', last];
}
