import fc from 'fast-check';
import { inputs } from '../../src/plan/book.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan, Reading, Value } from '../../src/plan/plan.ts';
import { planClash } from '../../src/plan/plan-clash.ts';
import type { InputCell } from '../../src/plan/template.ts';

/** Text of one line that a plan may hold. */
const line = (maxLength: number) =>
  fc.string({ unit: fc.constantFrom(...'abcXYZ 019.,;:!?"\\/{}[]<>&%#éß漢字🙂'), maxLength });

const lines = fc.string({ unit: fc.constantFrom(...'abc "\\\n\t漢'), maxLength: 60 });

const name = line(20)
  .map((it) => `n${it}`.normalize('NFC').trim())
  .filter((it) => it.length <= 64);

const anyValue = (cell: InputCell): fc.Arbitrary<Value> => {
  if (cell.type === 'flag') return fc.boolean();
  if (cell.type === 'word') return fc.constantFrom(...(cell.words ?? []));
  if (cell.only !== undefined) return fc.constantFrom(...cell.only);
  const [low, high] = cell.usual ?? [cell.value as number, cell.value as number];
  return cell.type === 'whole'
    ? fc.integer({ min: low, max: high })
    : fc.double({ min: low, max: high, noNaN: true }).map((it) => it + 0);
};

const anyReading = (cell: InputCell): fc.Arbitrary<Reading> =>
  fc.record(
    {
      value: fc.oneof({ weight: 9, arbitrary: anyValue(cell) }, fc.constant(null)),
      formula: fc.constantFrom('=transom_rake * 2', '=1 + "a"'),
      offBy: fc.double({ min: 0, max: 100, noNaN: true }),
      normal: fc.constant(true as const),
      origin: fc.constantFrom('reading', 'manual', 'stand-in', 'assumed', 'choice'),
      who: line(20),
      when: line(20),
      with: line(20),
      note: lines,
    },
    { requiredKeys: ['value', 'origin'] },
  );

const readings = (cells: readonly InputCell[]): fc.Arbitrary<ReadonlyMap<string, Reading>> =>
  fc
    .subarray([...cells], { maxLength: 6 })
    .chain((some) => fc.tuple(...some.map((cell) => anyReading(cell).map((it) => [cell.name, it] as const))))
    .map((pairs) => new Map(pairs));

/** Any plan that a person could have made and that breaks no relation. */
export const arbitraryPlan: fc.Arbitrary<Plan> = fc
  .record({
    title: name,
    units: fc.constantFrom('mm', 'in', 'both'),
    notes: lines,
    base: readings(inputs),
    scenarios: fc.uniqueArray(
      fc.record({ name, note: lines, overrides: readings(inputs) }, { requiredKeys: ['name', 'overrides'] }),
      { selector: (it) => it.name, maxLength: 3 },
    ),
    active: fc.nat(3),
    locked: fc.subarray(inputs.filter((cell) => cell.kind === 'choice').map((cell) => cell.name)),
    ownCells: fc.uniqueArray(
      fc.record(
        {
          name: fc.constantFrom('my_gap', 'my_sum', 'stand', 'q_b'),
          label: line(30),
          unit: fc.constantFrom('mm', '–'),
          value: fc.option(fc.double({ noNaN: true, noDefaultInfinity: true }).map((it) => it + 0)),
          formula: fc.constantFrom('=1', '=standoff + 2'),
          note: lines,
        },
        { requiredKeys: ['name', 'label', 'unit', 'value'] },
      ),
      { selector: (it) => it.name, maxLength: 3 },
    ),
    limits: fc.constantFrom(
      [],
      [{ name: 'my_limit', result: 'standoff', low: 1.5, near: 0 }],
      [{ name: 'far', result: 'shaft_x', low: -3, high: 1e6, near: 2, note: 'why' }],
    ),
    tables: fc.constantFrom(
      [],
      [
        {
          name: 'profile',
          columns: ['z', 'x'],
          rows: [
            [0, 1.25],
            [100, null],
          ],
        },
      ],
      [
        {
          name: 'profile',
          columns: ['z'],
          rows: [[1], [2]],
          notes: [null, { label: 'foot', offBy: 2, normal: true as const, who: 'me', note: 'a\nb' }],
        },
      ],
    ),
    fit: fc.record({
      fitted: readings(inputs),
      drilled: fc.constantFrom(
        new Map(),
        new Map([
          ['upper_bracket_height', { planned: 800, who: 'R.', when: '2026-05-10 10:12' }],
          ['shim_count', { planned: null }],
        ]),
      ),
      wentOn: fc.constantFrom(
        [],
        [
          {
            step: 'first_hole',
            because: 'the yard has looked\nat it',
            despite: [
              { stop: 'reading_pilot', by: 2.5, says: 'It reads 23.5 mm.' },
              { stop: 'tick_inside', says: 'Step 1 is not ticked.' },
            ],
            who: 'R.',
            when: '2026-05-10 10:20',
          },
          { step: 'pilot', because: 'so', despite: [] },
        ],
      ),
      unticked: fc.constantFrom(
        [],
        [{ step: 'pilot', tickedBy: 'R.', tickedWhen: '2026-05-10', who: 'M.', when: '2026-05-11' }],
      ),
      steps: fc.constantFrom(
        [],
        [
          { step: 'first_hole', done: true, when: '2026-05-10' },
          { step: 'plumb', done: false, value: -0.5, note: 'again' },
        ],
      ),
      handover: fc.constantFrom(new Map(), new Map([['remarks', 'two\nlines']])),
    }),
    studies: fc.constantFrom(
      [],
      [{ study: 'sweep', settings: { input: 'shim_count', steps: 40, on: true, of: ['a', 'b'] } }],
    ),
  })
  .map(({ base, active, locked, scenarios, ...rest }): Plan => {
    const plan = newPlan(rest.title);
    const order = new Map(inputs.map((cell, i) => [cell.name, i]));
    const inOrder = <T>(map: ReadonlyMap<string, T>) =>
      new Map([...map].sort(([a], [b]) => (order.get(a) ?? 0) - (order.get(b) ?? 0)));
    return {
      ...plan,
      ...rest,
      inputs: new Map([...plan.inputs, ...base]),
      scenarios: scenarios.map((it) => ({ ...it, overrides: inOrder(it.overrides) })),
      active: scenarios[active]?.name ?? null,
      locked: new Set(locked),
      fit: { ...rest.fit, fitted: inOrder(rest.fit.fitted), drilled: inOrder(rest.fit.drilled) },
    };
  })
  .filter((plan) => planClash(plan) === undefined);
