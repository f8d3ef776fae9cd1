import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { following, leftOutSentence } from '../../../src/session/studies/left-out.ts';
import { surveyErrors } from '../../../src/session/studies/survey-errors.ts';
import { studyWords } from '../../../src/session/study-words.ts';
import { lawsSentence } from '../../../src/studies/uncertain/laws.ts';

const opened = openPlan(readFileSync('demo-data/measured-afloat.plan.json', 'utf8'));
if (!opened.ok) throw new Error(opened.why);
const { plan } = opened;

const rowsOf = (of: Plan, table: string) =>
  surveyErrors(of, null).filter((it) => it.name.startsWith(`${table}[`));

describe('what may be off in a survey', () => {
  it('is every row of a plumb line together, by the scatter of all', () => {
    const rows = rowsOf(plan, 'transom_readings');
    expect(rows.map((it) => it.name)).toEqual(
      Array.from({ length: 8 }, (_, i) => `transom_readings[${i + 1}].distance`),
    );
    expect(rows.every((it) => it.fit?.of === 'transom_readings' && it.fit.freedom === 6)).toBe(true);
    expect(rowsOf(plan, 'rudder_readings').every((it) => it.fit?.freedom === 2)).toBe(true);
    expect(rowsOf(plan, 'camber_readings').every((it) => it.fit?.freedom === 5)).toBe(true);
  });

  it('is each row by itself where the face is followed row by row', () => {
    const follow = { value: true, origin: 'choice' } as const;
    const followed = { ...plan, inputs: new Map(plan.inputs).set('follow_profile', follow) };
    const rows = rowsOf(followed, 'transom_readings');
    expect(rows).toHaveLength(8);
    expect(rows.every((it) => it.fit === undefined && it.offBy === 3 && it.law === 'rectangular')).toBe(true);
    expect(rowsOf(followed, 'rudder_readings')[0]?.fit?.freedom).toBe(2);
  });

  it('is each edge of what is in the way, and no thickness by more than it is', () => {
    expect(rowsOf(plan, 'keep_outs_outside')).toHaveLength(8);
    const thin = surveyErrors(plan, null).find((it) => it.name === 'obstacles[3].half_thickness');
    expect(thin).toMatchObject({ value: 4, offBy: 4 });
  });

  it('leaves rows out that lack a figure, and keeps the others’ places', () => {
    const [first] = plan.tables;
    if (first === undefined) throw new Error('no table');
    const rows = first.rows.map((row, i) => (i === 1 ? [row[0] ?? null, null] : row));
    const gap = { ...plan, tables: [{ ...first, rows }, ...plan.tables.slice(1)] };
    const names = rowsOf(gap, 'transom_readings').map((it) => it.name);
    expect(names).toHaveLength(7);
    expect(names[1]).toBe('transom_readings[3].distance');
  });
});

describe('sentences about the spread', () => {
  it('name the law of every reading', () => {
    const words = studyWords(plan);
    expect(lawsSentence(surveyErrors(plan, null), words)).toBe(
      'How each may be off: 31 readings are spread evenly across their ±; the transom’s plumb line, the rudder’s ' +
        'plumb line and the straightedge across the transom are as far off as the scatter of their rows says ' +
        '(Student’s t, 6, 2 and 5 degrees of freedom).',
    );
    const two = surveyErrors(plan, null).flatMap((it) =>
      it.fit === undefined ? [] : [{ ...it, fit: { ...it.fit, of: 'rudder_readings', freedom: null } }],
    );
    expect(lawsSentence(two, words)).toBe(
      'How each may be off: the rudder’s plumb line is bell-shaped, by the ± of its rows, whose scatter tells nothing.',
    );
    const bell = { name: 'transom_top', value: 900, offBy: 2, law: 'normal' } as const;
    expect(lawsSentence([bell], words)).toBe(
      'How each may be off: 1 reading is bell-shaped, with a standard deviation as ±.',
    );
  });

  it('say what is left out', () => {
    expect(following(plan, null)).toContain('transom_rake');
    expect(leftOutSentence(plan, null)).toBe(
      'Left out: a misread figure, a wrong manual and a face or rudder edge of another shape than it is taken for.',
    );
    const own = { name: 'edge', label: 'Edge', unit: 'mm', value: 900 };
    const top = { value: null, formula: '=edge', origin: 'reading', offBy: 5 } as const;
    const still = { ...plan, ownCells: [own], inputs: new Map(plan.inputs).set('transom_top', top) };
    expect(leftOutSentence(still, null)).toMatch(
      /, how far your own cells may be off and the ± of transom top, where what is followed has none\.$/,
    );
  });
});
