import { NoAnswer } from '../calc/answer.ts';
import { inputNamed } from '../plan/book.ts';
import { CAUTION } from '../plan/caution.ts';
import type { CellName } from '../plan/names.ts';
import type { Plan, Units, Value } from '../plan/plan.ts';
import { formatValue } from '../units/format-value.ts';
import { leanWords, stands } from './bob.ts';
import { checkVerdict } from './check-words.ts';
import { keyOf } from './key.ts';
import type { Check, WorkStep } from './step.ts';
import { stopPoints } from './stop-points.ts';

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
  { name: 'gear', label: 'Gear: what its plate says, and which manual' },
  { name: 'bolts', label: 'Bolts, plates and sealant as used', lines: 2 },
  { name: 'struts_cut', label: 'Strut lengths as cut' },
  { name: 'torque', label: 'Torque as tightened, and where the figure is from' },
  { name: 'remarks', label: 'What differs from the plan, and why', lines: 2 },
  { name: 'handed_to', label: 'Handed over to' },
];

/** What remains to be checked, and when. Common practice, no source. */
export const DUE: readonly (Entry & { readonly what: string })[] = [
  {
    name: 'due_day',
    label: 'After a day',
    what: 'Tighten every hull bolt again. Look inside for drops.',
  },
  {
    name: 'due_first_sail',
    label: 'After the first sail',
    what: 'Hang the bob: the shaft has not moved. Clamps have not slipped on the tubes, hinges do not rattle, no drop inside, no crack in the gelcoat round a flange.',
  },
  {
    name: 'due_week',
    label: 'After a week',
    what: 'Tighten every bolt again, hull first, shaft last. Look at collar, pin and lanyard.',
  },
  {
    name: 'due_month',
    label: 'After a month',
    what: 'Tighten once more: plastic goes on creeping. Measure the gap between the rudders hard over. Look at every plate inside for crushed or wet laminate.',
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

interface Said {
  readonly given: HandoverGiven;
  readonly shown: (name: string, value: Value) => string;
  readonly titleOf: (step: string) => string;
}

const by = (who?: string, when?: string): string => {
  const words = [who, when].filter((it) => it !== undefined && it !== '');
  return words.length === 0 ? '' : ` (${words.join(', ')})`;
};

/** What was read in place of planned values, and how the shaft leans. */
function fittedParts({ given: { plan, units, planned }, shown }: Said): RecordPart[] {
  const { fitted, drilled, steps } = plan.fit;
  const lean = stands(steps);
  return [
    heading('As fitted'),
    ...(fitted.size === 0 ? [text('No as-fitted readings entered.')] : []),
    ...[...fitted].map(([name, { value, who, when }]) => {
      const lock = drilled.get(name);
      const before = lock === undefined ? planned(name as CellName) : lock.planned;
      const locked = lock === undefined ? '' : `; locked as drilled${by(lock.who, lock.when)}`;
      return text(
        `${inputNamed(name)?.label ?? name}: ${shown(name, value)}, planned ${shown(name, before)}${by(who, when)}${locked}`,
      );
    }),
    text(
      lean instanceof NoAnswer
        ? lean.why
        : `The shaft leans ${leanWords(lean.boat, units)} in the boat${lean.lieRead ? ', list and trim taken out' : '; list and trim were not both read'}.`,
    ),
  ];
}

/** What was done in spite of a stop, and ticks taken off; no heading where there was neither. */
function dayBookParts({ given: { plan }, titleOf }: Said): RecordPart[] {
  const { wentOn, unticked } = plan.fit;
  return [
    ...(wentOn.length === 0 ? [] : [heading('Gone on all the same')]),
    ...wentOn.map(({ step, because, despite, who, when }) =>
      text(
        `${titleOf(step)}: because “${because}”${by(who, when)}. In spite of: ${despite.map((it) => it.says).join(' ')}`,
      ),
    ),
    ...(unticked.length === 0 ? [] : [heading('Ticks taken off')]),
    ...unticked.map(({ step, tickedBy, tickedWhen, who, when }) =>
      text(`${titleOf(step)}: ticked${by(tickedBy, tickedWhen)}, taken off${by(who, when)}`),
    ),
  ];
}

/** What was read at a step, and that it is not met where it is not. */
function readWords(check: Check, value: number, units: Units): string {
  const verdict = checkVerdict(check, value, units);
  const notMet = verdict === undefined || verdict.met ? '' : `. ${verdict.words.replace(/\.$/, '')}`;
  return `; ${check.what.toLowerCase()} ${formatValue(value, check.unit, { unit: units })}${notMet}`;
}

function stepParts({ given: { plan, units, steps } }: Said): RecordPart[] {
  const done = new Map(plan.fit.steps.map((it) => [it.step, it]));
  const open = steps.filter((it) => done.get(it.name)?.done !== true);
  return [
    heading('Steps done'),
    ...steps.flatMap(({ name, title, reading, wait }) => {
      const row = done.get(name);
      if (row === undefined || !row.done) return [];
      const read =
        row.value === undefined || reading === undefined ? '' : readWords(reading, row.value, units);
      const hours = wait === undefined ? undefined : done.get(wait.hours)?.value;
      const given = hours === undefined ? '' : `; the maker gives ${hours} h`;
      return [text(`${title}${read}${given}${by(row.who, row.when)}`)];
    }),
    text(
      open.length === 0
        ? 'All steps are ticked.'
        : open.length === steps.length
          ? 'No step is ticked.'
          : `Not ticked: ${open.map((it) => it.title).join('; ')}.`,
    ),
  ];
}

/** The record in its order. */
export function handoverRecord(given: HandoverGiven): readonly RecordPart[] {
  const { plan, units, steps } = given;
  const points = stopPoints(given.planned, units);
  const said: Said = {
    given,
    shown: (name, value) => formatValue(value, inputNamed(name)?.unit ?? '–', { unit: units }),
    titleOf: (step) =>
      steps.find((it) => it.name === step)?.title ??
      points.find((it) => keyOf(`stop ${it.name}`) === step)?.before ??
      step,
  };
  return [
    {
      kind: 'title',
      text: `Handover record: ${plan.title}${plan.active === null ? '' : `, ${plan.active}`}`,
    },
    ...HANDOVER_ENTRIES.map(
      ({ name, label, lines }): RecordPart => ({
        kind: 'entry',
        label,
        value: plan.fit.handover.get(name),
        lines: lines ?? 1,
      }),
    ),
    ...fittedParts(said),
    ...dayBookParts(said),
    ...stepParts(said),
    heading('Still to check'),
    ...DUE.map(
      ({ name, label, what }): RecordPart => ({
        kind: 'due',
        label,
        what,
        value: plan.fit.handover.get(name),
      }),
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
