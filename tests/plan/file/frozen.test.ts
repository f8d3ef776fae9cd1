import { describe, expect, it } from 'vitest';
import { inputNamed, inputs } from '../../../src/plan/book.ts';
import { CURRENT_VERSION } from '../../../src/plan/file/migrations.ts';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';

const files = import.meta.glob<string>('../../frozen/*.plan.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const versionOf = (text: string): number => (JSON.parse(text) as { version: number }).version;

/** A plan's own text without line ends and spaces, which may come to be laid out otherwise. */
const bare = (text: string): unknown => JSON.parse(text);

/** Inputs that the workbook has gained since a document was frozen, in its order; those of the survey go without saying. */
const since = (text: string): string[] => {
  const had = new Set(
    (JSON.parse(text) as { inputs: readonly { name: string }[] }).inputs.map((it) => it.name),
  );
  return inputs.filter((it) => !had.has(it.name) && it.with_table === undefined).map((it) => it.name);
};

const says = (gained: readonly string[]): string =>
  `These ${gained.length} inputs are missing from the file and hold the workbook's own stand-ins: ${gained.join(', ')}.`;

/** The same document without the inputs gained since; those of the survey go without saying where nothing was measured. */
const asFrozen = (text: string, gained: readonly string[]): unknown => {
  const document = JSON.parse(text) as { inputs: readonly { name: string }[] };
  return {
    ...document,
    inputs: document.inputs.filter(
      ({ name }) => !gained.includes(name) && inputNamed(name)?.with_table === undefined,
    ),
  };
};

describe('frozen documents', () => {
  it('are there for every version there has been', () => {
    const versions = Object.values(files)
      .map(versionOf)
      .sort((a, b) => a - b);
    expect(versions).toEqual(Array.from({ length: CURRENT_VERSION }, (_, i) => i + 1));
  });

  it.each(Object.entries(files))(
    '%s opens with nothing to say but which inputs it is too old to have',
    (_path, text) => {
      const opened = openPlan(text);
      expect(opened.ok && opened.notes).toEqual([says(since(text))]);
      if (opened.ok && versionOf(text) === CURRENT_VERSION)
        expect(asFrozen(writePlan(opened.plan), since(text))).toEqual(bare(text));
    },
  );

  it.each(Object.entries(files))('%s still means what it meant', (_path, text) => {
    const opened = openPlan(text);
    if (!opened.ok) throw new Error(opened.why);
    const { plan } = opened;
    expect(plan.title).toBe('Every kind of thing');
    expect(plan.units).toBe('in');
    expect(plan.notes).toBe('Two lines\nof notes, with “quotes” and a \\ stroke.');
    expect(plan.active).toBe('Five thin sheets');
    expect(plan.inputs.get('transom_rake')).toEqual({
      value: 12.5,
      offBy: 0.2,
      origin: 'reading',
      who: 'skipper',
      when: '2026-05-09',
      with: 'level',
      note: 'Read twice,\nboth the same.',
    });
    expect(plan.inputs.get('transom_top')).toEqual({
      value: 889,
      typed: '35',
      unit: 'in',
      offBy: 3,
      normal: true,
      origin: 'reading',
    });
    expect(plan.inputs.get('bolt_strength')).toEqual({ value: null, origin: 'manual' });
    expect(plan.inputs.get('vane_rudder_drop')?.formula).toBe('=my_sum - 10');
    expect(
      plan.scenarios.map((it) => [it.name, [...it.overrides].map(([name, { value }]) => [name, value])]),
    ).toEqual([
      ['As it is', []],
      [
        'Five thin sheets',
        [
          ['boat_speed', 7],
          ['shim_count', 5],
          ['shim_thickness', 6.35],
        ],
      ],
    ]);
    expect([...plan.locked]).toEqual(['port_foot_y', 'starboard_foot_y']);
    expect(plan.ownCells.map((it) => [it.name, it.value, it.formula])).toEqual([
      ['my_sum', null, '=100 + 2 * 30'],
      ['my_gap', 57.5, undefined],
    ]);
    expect(plan.limits.map((it) => [it.name, it.result, it.low, it.high, it.near])).toEqual([
      ['my_gap_least', 'my_gap', 40, undefined, 5],
      ['standoff_band', 'standoff', 150, 400, 10],
    ]);
    const isFirst = versionOf(text) === 1;
    expect(plan.tables).toEqual([
      {
        name: 'profile',
        columns: ['height', 'back'],
        rows: [
          [0, 0],
          [450, 96.5],
          [900, null],
        ],
        ...(isFirst
          ? {}
          : {
              notes: [
                null,
                {
                  label: 'at the step',
                  offBy: 1.5,
                  normal: true,
                  who: 'skipper',
                  when: '2026-05-09',
                  with: 'tape',
                  note: 'Bob swinging.',
                },
                null,
              ],
            }),
      },
    ]);
    expect([...plan.fit.fitted].map(([name, { value }]) => [name, value])).toEqual(
      isFirst ? [] : [['upper_bracket_height', 803]],
    );
    expect(plan.fit.steps).toEqual(
      isFirst
        ? []
        : [
            { step: 'first_hole', done: true, who: 'skipper', when: '2026-05-10', note: 'Dry.' },
            { step: 'plumb', done: false, value: 0.4 },
          ],
    );
    const hasDayBook = versionOf(text) >= 3;
    expect([...plan.fit.drilled]).toEqual(
      hasDayBook
        ? [
            ['port_foot_y', { planned: -170, who: 'skipper', when: '2026-05-10 16:05' }],
            ['starboard_foot_y', { planned: 170 }],
          ]
        : [],
    );
    expect(plan.fit.wentOn).toEqual(
      hasDayBook
        ? [
            {
              step: 'first_hole',
              because: 'the surveyor has looked at it',
              despite: [
                {
                  stop: 'reading_pilot',
                  by: 1.5,
                  says: 'Pilot the first hole: it read 22.5 mm, and must be at most 21 mm.',
                },
                { stop: 'tick_cloth', says: 'Step 2 is not ticked.' },
              ],
              who: 'skipper',
              when: '2026-05-10 10:12',
            },
          ]
        : [],
    );
    expect(plan.fit.unticked).toEqual(
      hasDayBook
        ? [
            {
              step: 'plumb',
              tickedBy: 'skipper',
              tickedWhen: '2026-05-10 11:00',
              who: 'the mate',
              when: '2026-05-10 11:20',
            },
          ]
        : [],
    );
    expect([...plan.fit.handover]).toEqual(isFirst ? [] : [['remarks', 'Re-tighten on Sunday.']]);
    expect(plan.studies).toEqual([
      {
        study: 'sweep',
        settings: {
          input: 'shim_count',
          from: 0,
          to: 8,
          whole: true,
          results: ['rudder_gap', 'bolt_utilisation'],
        },
      },
    ]);
  });
});
