import { describe, expect, it } from 'vitest';
import { inputs } from '../src/plan/book.ts';
import { setTableRow, tableRows } from '../src/plan/edit/tables.ts';
import { openPlan } from '../src/plan/file/open-plan.ts';
import { writePlan } from '../src/plan/file/write-plan.ts';
import { newPlan } from '../src/plan/new-plan.ts';
import type { Plan } from '../src/plan/plan.ts';
import { surveyTable, tables } from '../src/plan/tables.ts';
import { Workbook } from '../src/workbook/workbook.ts';

const files = import.meta.glob<string>('../demo-data/*.plan.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const nameOf = (path: string): string => path.replace(/^.*\/(.*)\.plan\.json$/, '$1');
const texts = new Map(Object.entries(files).map(([path, text]) => [nameOf(path), text]));

function planOf(name: string): Plan {
  const opened = openPlan(texts.get(name) ?? '');
  if (!opened.ok) throw new Error(opened.why);
  return opened.plan;
}

const BASE = null;

/** What each demo boat shows outside and near, base and scenarios; everything else is inside or does not apply. */
const SHOWN: Readonly<
  Record<string, readonly (readonly [string | null, readonly string[], readonly string[]])[]>
> = {
  start: [
    [BASE, [], ['rudder_gap', 'rudder_gap_swung', 'bolt_utilisation']],
    ['Three shims', ['rudder_gap', 'rudder_gap_swung'], []],
    ['Four shims', [], ['rudder_gap', 'rudder_gap_swung', 'bolt_utilisation']],
    ['Upper bracket raised', ['drive_headroom'], ['rudder_gap', 'rudder_gap_swung', 'bolt_utilisation']],
  ],
  'raked-aft': [
    [BASE, ['shaft_face_gap'], ['strut_spread']],
    ['Three shims', [], ['shaft_face_gap']],
    ['Four shims', [], ['bolt_utilisation']],
    ['Leaning aft', ['shaft_lean'], ['shaft_face_gap']],
  ],
  'beside-the-ladder': [
    [BASE, ['ladder_gap_least'], ['flange_yaw']],
    ['Clear of the ladder', ['flange_yaw'], []],
    ['Narrow stance', [], ['flange_yaw']],
  ],
  'measured-afloat': [
    [BASE, ['rudder_gap', 'rudder_gap_swung', 'starboard_foot_clear'], []],
    ['As first drawn', ['rudder_gap', 'rudder_gap_swung', 'starboard_foot_clear'], []],
    ['Clear of the ladder', [], []],
  ],
  'stern-hung-rudder': [
    [BASE, ['rudder_gap', 'retained'], []],
    ['Three shims', ['retained'], ['rudder_gap']],
    ['Four shims and a lanyard', [], []],
  ],
};

describe('the demo boats', () => {
  it('are all listed here', () => {
    expect([...texts.keys()].sort()).toEqual(Object.keys(SHOWN).sort());
  });

  it('open with nothing to say and are as they would be written; `npm run demo-data:write` writes them again', () => {
    const opened = [...texts].map(([name, text]) => [name, text, openPlan(text)] as const);
    const said = opened.filter(
      ([, text, it]) => !it.ok || it.notes.length > 0 || writePlan(it.plan) !== text,
    );
    expect(said.map(([name, , it]) => [name, it.ok ? it.notes : it.why])).toEqual([]);
  });

  it.each(Object.keys(SHOWN))('%s names nobody, and says where its values come from', (name) => {
    const plan = planOf(name);
    const all = [...plan.inputs.values(), ...plan.scenarios.flatMap((it) => [...it.overrides.values()])];
    const notes = plan.tables.flatMap((it) => it.notes ?? []);
    const who = [...all, ...notes].flatMap((it) => (it?.who === undefined ? [] : [it.who]));
    expect(who.filter((it) => it !== 'the owner' && it !== 'the mate')).toEqual([]);
    const origins = new Set([...plan.inputs.values()].map((it) => it.origin));
    expect([...origins].sort()).toEqual(['assumed', 'choice', 'manual', 'reading', 'stand-in']);
    for (const cell of inputs) {
      const reading = plan.inputs.get(cell.name);
      if (reading?.origin === 'reading') expect(reading.when, cell.name).toMatch(/^\d{4}-\d\d-\d\d$/);
    }
  });

  describe.each(Object.entries(SHOWN))('%s', (name, shown) => {
    const plan = planOf(name);

    it('has these scenarios', () => {
      expect([BASE, ...plan.scenarios.map((it) => it.name)]).toEqual(shown.map(([scenario]) => scenario));
    });

    it.each(shown.map(([scenario, outside, near]) => ({ scenario, outside, near })))(
      'shows outside and near in $scenario what it is said to',
      ({ scenario, outside, near }) => {
        const { limits, unanswered } = new Workbook(plan, scenario).judgement();
        const inState = (state: string) =>
          limits.filter((it) => it.verdict.state === state).map((it) => it.name);
        expect({ outside: inState('outside'), near: inState('near'), unanswered }).toEqual({
          outside,
          near,
          unanswered: 0,
        });
        expect(inState('inside').length).toBeGreaterThan(25);
      },
    );
  });
});

describe('the boat to start from', () => {
  const plan = planOf('start');

  it('has the workbook’s own values for its base', () => {
    const template = newPlan('x');
    for (const { name } of inputs) {
      expect([name, plan.inputs.get(name)?.value]).toEqual([name, template.inputs.get(name)?.value]);
    }
  });

  it('shows three shims, and each scenario changes one thing', () => {
    expect(plan.active).toBe('Three shims');
    expect(
      plan.scenarios.map((it) => [it.name, [...it.overrides].map(([name, { value }]) => [name, value])]),
    ).toEqual([
      ['Three shims', [['shim_count', 3]]],
      ['Four shims', [['shim_count', 4]]],
      ['Upper bracket raised', [['upper_bracket_height', 900]]],
    ]);
  });

  it.each([
    // Answers of a second, separate implementation, to four decimals.
    ['Three shims', 'rudder_gap', 44.7009],
    ['Four shims', 'rudder_gap', 56.886],
    ['Upper bracket raised', 'drive_headroom', -20],
  ])('%s: %s', (scenario, name, answer) => {
    expect(new Workbook(plan, scenario).answer(name).value).toBeCloseTo(answer, 4);
  });
});

describe('the boats that differ in kind', () => {
  it('have a transom raked aft whose top edge is where the tube comes closest', () => {
    const plan = planOf('raked-aft');
    const workbook = new Workbook(plan, null);
    const number = (name: string) => workbook.answer(name).value as number;
    expect(number('transom_rake')).toBeGreaterThan(0);
    // Where the face leans aft and the tube stands upright, the gap at the top edge is the least there is.
    const top = Math.tan((number('transom_rake') * Math.PI) / 180) * number('transom_top');
    expect(number('shaft_face_gap')).toBeCloseTo(number('shaft_x') - number('tube_od') / 2 - top, 6);
  });

  it('have a mount off the centreline of a curved face', () => {
    const plan = planOf('beside-the-ladder');
    expect(plan.inputs.get('transom_camber_radius')?.value).toBeGreaterThan(0);
    expect(plan.inputs.get('shaft_offset')?.value).toBeLessThan(0);
    expect(plan.inputs.get('transom_top')).toMatchObject({ typed: '37 1/2 in', value: 952.5 });
  });

  it('have been measured afloat, with one row that does not go with the rest', () => {
    const plan = planOf('measured-afloat');
    for (const { name } of tables) expect(surveyTable(plan, name).rows.length, name).toBeGreaterThan(1);
    for (const note of plan.tables.flatMap((it) => it.notes ?? [null])) {
      expect([note?.who, note?.when, note?.with].every(Boolean)).toBe(true);
    }
    const before = new Workbook(plan, null);
    const number = (workbook: Workbook, name: string) => workbook.answer(name).value as number;
    expect(number(before, 'transom_suspicious')).toBe(1);
    // It was drawn with a rake of −7° and a hollow of 5 mm, and lies 0.6° by the stern.
    expect(number(before, 'survey_trim')).toBeCloseTo(0.6, 2);
    expect(Math.abs(number(before, 'transom_rake') + 7)).toBeGreaterThan(1);
    const rows = tableRows(plan, 'transom_readings');
    const mended = setTableRow(plan, 'transom_readings', 6, {
      values: [820, 708],
      note: rows[6]?.note ?? null,
    });
    if (!mended.ok) throw new Error(mended.why);
    const after = new Workbook(mended.plan, null);
    expect(number(after, 'transom_suspicious')).toBe(0);
    expect(Math.abs(number(after, 'transom_rake') + 7)).toBeLessThan(0.2);
  });

  it('have a rudder hung on the stern, and one strut', () => {
    const plan = planOf('stern-hung-rudder');
    expect(plan.inputs.get('rudder_stock_ahead')?.value).toBeLessThan(0);
    expect(plan.inputs.get('strut_count')?.value).toBe(1);
  });
});
