import { cellNamed, inputs } from '../../plan/book.ts';
import type {
  OwnCell,
  OwnLimit,
  Plan,
  Reading,
  RowNote,
  Scenario,
  StepDone,
  SurveyTable,
} from '../../plan/plan.ts';
import { tableNamed } from '../../plan/tables.ts';
import type { InputCell } from '../../plan/template.ts';
import { formatValue } from '../../units/format-value.ts';

/** One thing that a plan has otherwise than the plan it would replace. A side without it is null. */
export interface Change {
  readonly title: string;
  /** The cell's name, where there is one. */
  readonly name?: string;
  readonly before: string | null;
  readonly after: string | null;
}

export interface ChangeGroup {
  readonly title: string;
  readonly changes: readonly Change[];
}

/** Texts of both plans in the unit of the plan that stays. */
type Style = { readonly unit: Plan['units'] };

const ORIGIN: Readonly<Record<Reading['origin'], string>> = {
  reading: 'reading',
  manual: 'gear’s manual',
  'stand-in': 'stand-in',
  assumed: 'assumed',
  choice: 'choice',
};

const readingText = (cell: InputCell, reading: Reading, style: Style): string => {
  const value =
    reading.formula ?? (reading.value === null ? 'empty' : formatValue(reading.value, cell.unit, style));
  return `${value}, ${ORIGIN[reading.origin]}`;
};

const changed = (change: Change): readonly Change[] => (change.before === change.after ? [] : [change]);

function inputChanges(before: Plan, after: Plan, style: Style): Change[] {
  const text = (plan: Plan, cell: InputCell): string | null => {
    const reading = plan.inputs.get(cell.name);
    return reading === undefined ? null : readingText(cell, reading, style);
  };
  return inputs.flatMap((cell) =>
    changed({ title: cell.label, name: cell.name, before: text(before, cell), after: text(after, cell) }),
  );
}

/** Entries of two lists that go by name, told apart by the text each side gives them. */
function named<T extends { readonly name: string }>(
  before: readonly T[],
  after: readonly T[],
  title: (it: T) => string,
  text: (it: T) => string,
): Change[] {
  const names = [...new Set([...before, ...after].map((it) => it.name))];
  return names.flatMap((name) => {
    const [old, next] = [before.find((it) => it.name === name), after.find((it) => it.name === name)];
    const shown = next ?? old;
    return shown === undefined
      ? []
      : changed({
          title: title(shown),
          name,
          before: old === undefined ? null : text(old),
          after: next === undefined ? null : text(next),
        });
  });
}

const noted = (text: string, note: string | undefined): string => (note ? `${text} (${note})` : text);

const ownCellText = ({ label, unit, value, formula, note }: OwnCell, style: Style): string =>
  noted(`${label}: ${formula ?? (value === null ? 'empty' : formatValue(value, unit, style))}`, note);

function limitText(limit: OwnLimit, unit: string, style: Style): string {
  const { low, high, near, note } = limit;
  const bounds = [
    ...(low === undefined ? [] : [`at least ${formatValue(low, unit, style)}`]),
    ...(high === undefined ? [] : [`at most ${formatValue(high, unit, style)}`]),
    ...(near === 0 ? [] : [`near within ${formatValue(near, unit, style)}`]),
  ];
  return noted(bounds.join(', '), note);
}

const scenarioText = ({ overrides, note }: Scenario, style: Style): string => {
  const values = inputs.flatMap((cell) => {
    const reading = overrides.get(cell.name);
    return reading === undefined ? [] : [`${cell.short}: ${readingText(cell, reading, style)}`];
  });
  return noted(values.length === 0 ? 'nothing of its own' : values.join('; '), note);
};

const listed = (names: Iterable<string>): string | null => {
  const labels = [...names].map((name) => cellNamed(name)?.short ?? name);
  return labels.length === 0 ? null : labels.join(', ');
};

const UNITS: Readonly<Record<Plan['units'], string>> = {
  mm: 'millimetres',
  in: 'inches',
  both: 'millimetres and inches',
};

const generalChanges = (before: Plan, after: Plan): Change[] => [
  ...changed({ title: 'Title', before: before.title, after: after.title }),
  ...changed({ title: 'Units', before: UNITS[before.units], after: UNITS[after.units] }),
  ...changed({
    title: 'Scenario shown',
    before: before.active ?? 'base values',
    after: after.active ?? 'base values',
  }),
  ...changed({ title: 'Locked as drilled', before: listed(before.locked), after: listed(after.locked) }),
  ...changed({ title: 'Notes', before: before.notes || null, after: after.notes || null }),
];

const rowText = (row: readonly (number | null)[], note: RowNote | null | undefined): string =>
  noted([...(note?.label ? [note.label] : []), ...row.map((it) => it ?? '–')].join(' '), note?.note);

const tableText = ({ columns, rows, notes }: SurveyTable): string =>
  `${columns.join(', ')}: ${rows.map((row, i) => rowText(row, notes?.[i])).join('; ')}`;

const unitOf = (plan: Plan, name: string): string =>
  (cellNamed(name) ?? plan.ownCells.find((cell) => cell.name === name))?.unit ?? '–';

const stepText = ({ done, value, note }: StepDone): string =>
  noted(`${done ? 'done' : 'not done'}${value === undefined ? '' : `, read ${value}`}`, note);

const joined = (words: readonly (string | undefined)[]): string => words.filter(Boolean).join(', ');

function fitChanges(before: Plan, after: Plan, style: Style): Change[] {
  const text = ({ fit }: Plan, cell: InputCell): string | null => {
    const reading = fit.fitted.get(cell.name);
    return reading === undefined ? null : readingText(cell, reading, style);
  };
  const dayBook = ({ fit }: Plan) => [
    ...fit.wentOn.map(({ step, because, despite, who, when }) => ({
      step,
      name: `gone on all the same, because ${because}: ${joined([...despite.map((it) => it.says), who, when])}`,
    })),
    ...fit.unticked.map(({ step, who, when }) => ({ step, name: `tick taken off: ${joined([who, when])}` })),
  ];
  const lines = ({ fit }: Plan) => [...fit.handover].map(([name, it]) => ({ name, text: it }));
  return [
    ...inputs.flatMap((cell) =>
      changed({ title: cell.label, name: cell.name, before: text(before, cell), after: text(after, cell) }),
    ),
    ...named(
      before.fit.steps.map((it) => ({ ...it, name: it.step })),
      after.fit.steps.map((it) => ({ ...it, name: it.step })),
      (it) => it.step,
      stepText,
    ),
    ...named(
      dayBook(before),
      dayBook(after),
      (it) => it.step,
      (it) => it.name,
    ),
    ...named(
      lines(before),
      lines(after),
      (it) => it.name,
      (it) => it.text,
    ),
  ];
}

/** What a plan would change if it took another's place, in the order of the work; groups without a change are left out. */
export function whatChanges(before: Plan, after: Plan): readonly ChangeGroup[] {
  const style: Style = { unit: before.units };
  const groups: readonly ChangeGroup[] = [
    { title: 'The plan', changes: generalChanges(before, after) },
    { title: 'Inputs', changes: inputChanges(before, after, style) },
    {
      title: 'Scenarios',
      changes: named(
        before.scenarios,
        after.scenarios,
        (it) => it.name,
        (it) => scenarioText(it, style),
      ),
    },
    {
      title: 'Own cells and formulas',
      changes: named(
        before.ownCells,
        after.ownCells,
        (it) => it.label || it.name,
        (it) => ownCellText(it, style),
      ),
    },
    {
      title: 'Limits of your own',
      changes: named(
        before.limits.map((limit) => ({ ...limit, unit: unitOf(before, limit.result) })),
        after.limits.map((limit) => ({ ...limit, unit: unitOf(after, limit.result) })),
        (it) => cellNamed(it.result)?.label ?? it.result,
        (it) => limitText(it, it.unit, style),
      ),
    },
    {
      title: 'Measured tables',
      changes: named(before.tables, after.tables, (it) => tableNamed(it.name)?.label ?? it.name, tableText),
    },
    { title: 'As fitted', changes: fitChanges(before, after, style) },
    {
      title: 'Studies',
      changes: named(
        before.studies.map((it) => ({ ...it, name: it.study })),
        after.studies.map((it) => ({ ...it, name: it.study })),
        (it) => it.study,
        ({ settings }) =>
          Object.entries(settings)
            .map(([name, value]) => `${name} ${value}`)
            .join(', ') || 'no settings',
      ),
    },
  ];
  return groups.filter((group) => group.changes.length > 0);
}
