import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import { figureName, figureNamed } from '../../../src/plan/table-figures.ts';
import { tables } from '../../../src/plan/tables.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

const opened = openPlan(readFileSync('demo-data/measured-afloat.plan.json', 'utf8'));
if (!opened.ok) throw new Error(opened.why);
const { plan } = opened;

/** Every figure of every row, over what it may be off and more. */
const ranges = plan.tables.flatMap(({ name: table, rows }) =>
  rows.flatMap((row, at) =>
    row.flatMap((value, column) => {
      const name = figureName({ table, row: at, column });
      return name === undefined || value === null ? [] : [{ name, low: value - 8, high: value + 8 }];
    }),
  ),
);

describe('figures of the survey’s tables', () => {
  it('have names that lead back to their places', () => {
    const all = tables.flatMap(({ name: table, columns }) =>
      columns.map((_, column) => ({ table, row: 6, column })),
    );
    for (const it of all) expect(figureNamed(figureName(it) ?? '')).toEqual(it);
    expect(figureName({ table: 'transom_readings', row: 0, column: 1 })).toBe('transom_readings[1].distance');
    expect(figureNamed('transom_rake')).toBeUndefined();
    expect(figureNamed('transom_readings[1].colour')).toBeUndefined();
  });

  it('are varied by a replay as by the engine, which has its own rows again afterwards', () => {
    const workbook = new Workbook(plan, null);
    const before = workbook.answer('rudder_gap').value;
    const results = [
      'rudder_gap',
      'port_strut_cut',
      'survey_hollow',
      'transom_suspicious',
      'face_off_straight',
    ];
    const replayed = workbook.replay(
      ranges.map((it) => it.name),
      results,
      workbook.limitRules(),
    );
    if (!replayed.ok) throw new Error(replayed.why);
    const proof = workbook.prove(plan, null, replayed.replay, ranges);
    let step = proof.next();
    while (step.done !== true) step = proof.next();
    expect(step.value).toEqual({ equal: true });
    expect(workbook.answer('rudder_gap').value).toBe(before);
  });

  it('leave alone what only counts rows, so that limits without a keep-out stay ruled out', () => {
    const bare = { ...plan, tables: plan.tables.filter((it) => !it.name.startsWith('keep_outs')) };
    const workbook = new Workbook(bare, null);
    const moved = ranges.map((it) => it.name).filter((it) => !it.startsWith('keep_outs'));
    const replayed = workbook.replay(moved, ['obstacles_given', 'face_followed'], []);
    if (!replayed.ok) throw new Error(replayed.why);
    expect(replayed.replay.program.steps).toEqual([]);
  });

  it('are refused where there is none', () => {
    const workbook = new Workbook(plan, null);
    expect(workbook.hasFigure('transom_readings[9].distance')).toBe(false);
    expect(() => workbook.show(plan, null, new Map([['transom_readings[9].distance', 1]]))).toThrow(
      'There is no figure transom_readings[9].distance in this plan.',
    );
  });
});
