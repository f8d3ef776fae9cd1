import { describe, expect, it } from 'vitest';
import { cellNamed } from '../../../src/plan/book.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Value } from '../../../src/plan/plan.ts';
import { NOTES, notesFound } from '../../../src/session/not-judged/notes.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

const workbook = new Workbook(newPlan('Notes'));
const valueAt = (name: string): Value => workbook.answer(name).value;

const said = (title: string, look = valueAt): string => {
  const note = NOTES.find((it) => it.title === title);
  if (note === undefined) throw new Error(`There is no note on ${title}.`);
  return note.pieces
    .map((piece) =>
      typeof piece === 'string' ? piece : 'cell' in piece ? String(look(piece.cell)) : piece.works(look),
    )
    .join('');
};

describe('notes on what is not judged', () => {
  it('name only cells that are there', () => {
    const names = NOTES.flatMap((note) => note.pieces).flatMap((it) =>
      typeof it === 'object' && 'cell' in it ? [it.cell] : [],
    );
    expect(names.length).toBeGreaterThan(5);
    expect(names.filter((name) => cellNamed(name) === undefined)).toEqual([]);
  });

  it('show the stock in both steels', () => {
    // By hand from the model's answers: 0.7853·450/205 = 1.7238.
    expect(said('The steel of the stock')).toContain('it would bear 1.72.');
  });

  it('put the part with the largest share first', () => {
    expect(said('What gives first')).toMatch(
      /^By share of what each bears: the lower bolts 0\.86, the stock 0\.79, the skin round a lower bolt 0\.74/,
    );
  });

  it('say whether the packing is past four thirds of the bolt', () => {
    const packed =
      (packing: number) =>
      (name: string): Value =>
        name === 'lower_packing' ? packing : name === 'bolt_diameter' ? 12 : 0;
    expect(said('Loose sheets creep', packed(16))).toContain('It is not past that here.');
    expect(said('Loose sheets creep', packed(16.1))).toContain('It is past that here.');
  });

  it('estimate bending, slamming and the swing of the bolts', () => {
    const text = said('Bending, slamming, fatigue');
    // By hand from the model's answers: 4471.1642·150²·(550 + 150)/(3·193000·I), I = π/64·(60.3⁴ − 52.5⁴) mm⁴.
    expect(text).toContain('gives way by about 0.4 mm');
    // ½·1025·5.15·0.0603·5².
    expect(text).toContain('pushes with about 3979 N on each metre');
    // 11797.4·(752.36/2794.48)/84.3.
    expect(text).toContain('swings by about 38 MPa under daily steering');
  });

  it('say so where a number is missing', () => {
    const nothing = (): Value => null;
    expect(said('The steel of the stock', nothing)).toContain('no answer');
    expect(said('What gives first', nothing)).toContain('no answer');
    expect(said('Bending, slamming, fatigue', nothing).match(/no answer/g)).toHaveLength(3);
  });

  it('say what a little more speed does to the fullest part', () => {
    // The lower bolts bear 0.864 of what they can; 0.864 · 1.05² = 0.9526.
    expect(said('Is a share of 0.9 bad?')).toContain(
      'the lower bolts, 0.86; were the boat 5 % faster than you put in, 0.95',
    );
  });

  it.each([
    ['what is not judged: bearings', 'Bearings, clamps, bracket arms, hinge pins'],
    ['loaded or light waterline', 'Loaded or light'],
    ['can the nuts be reached?', 'Reaching the nuts'],
    ['tools, hands and hours', 'Tools, hands and hours'],
    ['how long', 'Tools, hands and hours'],
    ['when to stop', 'When to stop'],
    ['manual disagree', 'When the manual and this page disagree'],
    ['is 0.9 bad', 'Is a share of 0.9 bad?'],
    ['touches bottom', 'Touching bottom'],
    ['run aground', 'Touching bottom'],
  ])('are found by “%s”', (typed, title) => {
    expect(notesFound(typed).map((it) => it.title)).toContain(title);
  });

  it('are not found by what none is about', () => {
    expect(notesFound('')).toEqual([]);
    expect(notesFound('is it the')).toEqual([]);
    expect(notesFound('mast')).toEqual([]);
  });
});
