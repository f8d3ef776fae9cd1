import { describe, expect, it } from 'vitest';
import { studentFactor } from '../../../src/calc/uncertainty/student.ts';
import { edited } from '../../../src/plan/edit/edited.ts';
import { setApart } from '../../../src/plan/edit/reading.ts';
import { addTableRows } from '../../../src/plan/edit/tables.ts';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { tableNamed } from '../../../src/plan/tables.ts';
import type { TableTemplate } from '../../../src/plan/template.ts';
import { whatChanges } from '../../../src/session/plan-file/what-changes.ts';
import { Session } from '../../../src/session/session.ts';
import { fittedRows } from '../../../src/session/survey/fitted-rows.ts';
import { rakeWithin } from '../../../src/session/survey/rake-within.ts';
import { readRows } from '../../../src/session/survey/read-rows.ts';
import { takeOver, takeOverFor } from '../../../src/session/survey/take-over.ts';
import { TAKE_OVERS } from '../../../src/session/survey/take-overs.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

const READINGS = tableNamed('transom_readings') as TableTemplate;
const rows = (text: string) => {
  const read = readRows(READINGS, text, 'mm');
  if (!read.ok) throw new Error(read.why);
  return read.rows;
};
const why = (text: string, bare: 'mm' | 'in' = 'mm'): string => {
  const read = readRows(READINGS, text, bare);
  return read.ok ? '' : read.why;
};

describe('how far the rake may be off', () => {
  it('is the rows’ Student’s t, with the waterline marks and the list in it', () => {
    const session = opened();
    session.edit('rows', (it) =>
      addTableRows(it, 'transom_readings', rows('0;500\n100;521\n200;540\n300;561')),
    );
    const error = Number(session.value('survey_rake_error'));
    // Two rows more than the line takes: t(2) is 4.3027 at 95 %, by the published table.
    const still = (it: Plan): Plan => ({
      ...it,
      inputs: new Map(
        [...it.inputs].map(([name, reading]) => [
          name,
          /^(trim_mark|list_)/.test(name) ? { ...reading, offBy: 0 } : reading,
        ]),
      ),
    });
    expect(rakeWithin(still(session.plan))).toBeCloseTo(4.302653 * error, 6);
    // Marks 10 mm off each over 8 m turn it by 10/√3·√2/8000; the rows and they together by JCGM 100, G.4.1.
    const trim = (((10 / Math.sqrt(3)) * Math.SQRT2) / 8000) * (180 / Math.PI);
    const all = Math.hypot(error, trim);
    const freedom = all ** 4 / (error ** 4 / 2);
    expect(rakeWithin(session.plan)).toBeCloseTo(studentFactor(0.95, freedom) * all, 2);
  });
});

describe('rows pasted', () => {
  it('are set apart by tabs, semicolons or blanks, each figure as a person types it', () => {
    expect(rows('0\t500\n100; 48 cm\r\n\n-20  2 3/8 in\n150 470').map((it) => it.values)).toEqual([
      [0, 500],
      [100, 480],
      [-20, 60.325],
      [150, 470],
    ]);
    // A unit ends a figure, so one blank after it is enough.
    expect(rows('4 in 20 1/2 in\n10 cm 500 mm\n60 mm 2"').map((it) => it.values)).toEqual([
      [101.6, 520.7],
      [100, 500],
      [60, 50.8],
    ]);
    expect(rows('0;').map((it) => it.values)).toEqual([[0, null]]);
  });

  it('are refused with the line that cannot be read', () => {
    expect(why('0 500\n3')).toBe(
      'Line 2 has 1 figure; 2 are wanted: height, line to face. Set them apart by a semicolon, a tab or two blanks.',
    );
    expect(why('0;500\n1;2 3/0')).toContain('Line to face in line 2');
    expect(why('2 3/8')).toContain('Line 1 has 1 figure');
    expect(why(' \n ')).toBe('There is no line of figures in it.');
  });

  it('are in inches where inches are shown', () => {
    const read = readRows(READINGS, '0;10', 'in');
    expect(read.ok && read.rows[0]?.values).toEqual([0, 254]);
  });
});

describe('the line through the rows', () => {
  it('leaves out what is not complete, and says how far each is off', () => {
    const fit = fittedRows(rows('0;0\n100;6\n150;\n200;0'), READINGS);
    expect(fit?.rows.map((it) => [it.at, it.off])).toEqual([
      [0, -2],
      [1, 4],
      [3, -2],
    ]);
    expect(fittedRows(rows('0;0'), READINGS)).toBeUndefined();
  });
});

const opened = (): Session => {
  const session = new Session(newPlan('Survey'));
  session.attach(new Workbook(session.plan, null));
  return session;
};

describe('taking a reading over', () => {
  it('is offered once it was measured, and not for a stand-in', () => {
    const session = opened();
    for (const { name } of TAKE_OVERS) expect(takeOverFor(session.plan, name)).toBeUndefined();
    session.enter('top_reading', '905');
    expect(takeOverFor(session.plan, 'transom_top')?.from).toBe('survey_top');
    session.enter('rake_reading', '-9.5');
    expect(takeOverFor(session.plan, 'transom_rake')?.from).toBe('level_rake');
    session.edit('rows', (it) => addTableRows(it, 'transom_readings', rows('0;500\n100;521')));
    expect(takeOverFor(session.plan, 'transom_rake')?.from).toBe('survey_rake');
  });

  it('leaves a reading with its own formula and ±, which the file keeps', () => {
    const session = opened();
    session.edit('rows', (it) =>
      addTableRows(it, 'transom_readings', rows('0;500\n100;521\n200;540\n300;561')),
    );
    const offer = takeOverFor(session.plan, 'transom_rake');
    if (offer === undefined) throw new Error('Nothing is offered.');
    takeOver(session, offer, 'Rake');
    expect(takeOverFor(session.plan, 'transom_rake')).toBeUndefined();
    const reading = session.reading('transom_rake');
    expect(reading).toMatchObject({
      formula: '=survey_rake',
      origin: 'reading',
      with: 'plumb line',
    });
    expect(reading?.normal).toBeUndefined();
    expect(reading?.offBy).toBe(rakeWithin(session.plan));
    expect(session.value('transom_slope')).toBe(session.value('survey_rake'));
    const again = openPlan(writePlan(session.plan));
    expect(again.ok && again.plan.inputs.get('transom_rake')).toEqual(reading);
    session.undo();
    expect(session.value('transom_rake')).toBe(-10);
  });

  it('carries the ± of the rows as they are, until somebody says otherwise', () => {
    const session = opened();
    session.edit('rows', (it) =>
      addTableRows(it, 'transom_readings', rows('0;500\n100;521\n200;540\n300;561')),
    );
    const offer = takeOverFor(session.plan, 'transom_rake');
    if (offer === undefined) throw new Error('Nothing is offered.');
    takeOver(session, offer, 'Rake');
    const first = session.reading('transom_rake')?.offBy;
    session.edit('row', (it) => addTableRows(it, 'transom_readings', rows('400;585')));
    const second = session.reading('transom_rake')?.offBy;
    expect(second).not.toBe(first);
    expect(second).toBe(rakeWithin(session.plan));
    session.undo();
    expect(session.reading('transom_rake')?.offBy).toBe(first);
    session.redo();
    expect(session.reading('transom_rake')?.offBy).toBe(second);
    session.annotate('transom_rake', { offBy: 0.5 });
    session.edit('row', (it) => addTableRows(it, 'transom_readings', rows('500;601')));
    expect(session.reading('transom_rake')?.offBy).toBe(0.5);
  });

  it('carries it in a scenario’s own reading too, whichever scenario is looked at', () => {
    const session = opened();
    session.edit('rows', (it) =>
      addTableRows(it, 'transom_readings', rows('0;500\n100;521\n200;540\n300;561')),
    );
    const mine = { name: 'Mine', overrides: new Map() };
    session.edit('scenario', (it) => edited({ ...it, scenarios: [mine], active: 'Mine' }));
    session.edit('apart', (it) => setApart(it, 'transom_rake'));
    const offer = takeOverFor(session.plan, 'transom_rake');
    if (offer === undefined) throw new Error('Nothing is offered.');
    takeOver(session, offer, 'Rake');
    const own = (): number | undefined => session.plan.scenarios[0]?.overrides.get('transom_rake')?.offBy;
    const base = session.plan.inputs.get('transom_rake');
    expect(own()).toBe(rakeWithin(session.plan));
    session.edit('row', (it) => addTableRows(it, 'transom_readings', rows('400;585')));
    expect(own()).toBe(rakeWithin(session.plan));
    session.edit('look', (it) => edited({ ...it, active: null }));
    session.edit('row', (it) => addTableRows(it, 'transom_readings', rows('500;601')));
    expect(own()).toBe(rakeWithin(session.plan));
    expect(session.plan.inputs.get('transom_rake')).toEqual(base);
  });

  it('follows a result that is there for an input that is there', () => {
    const session = opened();
    for (const { name, from } of TAKE_OVERS) {
      expect(session.reading(name), name).toBeDefined();
      expect(session.workbook?.names, from).toContain(from);
    }
  });
});

it('a stranger’s plan says which rows it would change', () => {
  const before = newPlan('Mine');
  const edited = addTableRows(before, 'transom_readings', [
    { values: [0, 500], note: { label: 'at the step' } },
  ]);
  if (!edited.ok) throw new Error(edited.why);
  const group = whatChanges(before, edited.plan).find((it) => it.title === 'Measured tables');
  expect(group?.changes).toEqual([
    {
      title: 'Plumb line to the transom',
      name: 'transom_readings',
      before: null,
      after: 'height, distance: at the step 0 500',
    },
  ]);
});
