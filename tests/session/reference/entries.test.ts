import { describe, expect, it } from 'vitest';
import { catalogue, tableFunctions } from '../../../src/calc/catalogue.ts';
import { inputs, limitCells, results } from '../../../src/plan/book.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { STANDARD_WORDS } from '../../../src/plan/standard-words.ts';
import { callOf } from '../../../src/session/reference/call-of.ts';
import { bookEntries, entriesWith, found } from '../../../src/session/reference/entries.ts';
import { exampleOf } from '../../../src/session/reference/example-of.ts';
import { STANDARD_FUNCTIONS } from '../../../src/session/reference/standard-functions.ts';
import { whereFrom } from '../../../src/session/reference/where-from.ts';
import { isCellName } from '../../../src/workbook/contents.ts';
import { formulaWords } from '../../../src/workbook/formula-words.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

describe('the reference', () => {
  it('has every function that a formula may call, and no other', () => {
    const ids = bookEntries
      .filter((it) => it.kind === 'function' || it.kind === 'standard')
      .map((it) => it.id);
    expect(new Set(ids)).toEqual(new Set(formulaWords));
    expect(ids).toHaveLength(catalogue.length + tableFunctions.length + STANDARD_WORDS.length);
  });

  it('has every named cell and every room once', () => {
    const names = bookEntries.filter((it) => it.kind === 'cell' || it.kind === 'room').map((it) => it.id);
    expect(new Set(names).size).toBe(names.length);
    const graded = limitCells.filter((it) => it.graded !== false);
    expect(names).toHaveLength(inputs.length + results.length + graded.length);
    const plan = newPlan('');
    expect(names.filter((name) => !isCellName(name, plan))).toEqual([]);
  });

  it('calls each standard function by its own name', () => {
    for (const it of STANDARD_FUNCTIONS) expect(it.call.startsWith(`${it.id}(`)).toBe(true);
  });
});

describe('the standard functions', () => {
  const ownCells = STANDARD_FUNCTIONS.map((it, i) => ({
    name: `example_of_${i}`,
    label: it.id,
    unit: '–',
    value: null,
    formula: it.example,
  }));
  const workbook = new Workbook({ ...newPlan(''), ownCells });

  it.each(STANDARD_FUNCTIONS.map((it, i) => ({ ...it, name: `example_of_${i}` })))('$example', (it) => {
    const { value } = workbook.answer(it.name);
    if (typeof it.answer === 'boolean') expect(value).toBe(it.answer);
    else expect(value).toBeCloseTo(it.answer, 12);
    expect(it.example.includes(`${it.id}(`)).toBe(true);
  });
});

describe('callOf', () => {
  it('sets what may be left out in brackets', () => {
    const record = catalogue.find((it) => it.id === 'TRANSOM_FACE_X');
    expect(record && callOf(record)).toBe('TRANSOM_FACE_X(y; z; rake; camber_radius; [profile])');
  });
});

describe('exampleOf', () => {
  it('writes the call with its numbers and what it gives', () => {
    const record = catalogue.find((it) => it.id === 'TRANSOM_FACE_X') ?? expect.fail();
    // The profile comes to x = 60 at 120 up; the camber takes the sagitta of 600 mm on R 2500 off it.
    expect(exampleOf(record)).toBe(
      'TRANSOM_FACE_X(300; 120; 12; 2500; table of 20 10, 220 110) = 41.934729 mm',
    );
  });

  it('writes yes/no as formulas do', () => {
    const record = catalogue.find((it) => it.flag === true) ?? expect.fail();
    expect(exampleOf(record)).toMatch(/= (?:TRUE|FALSE)$/);
  });
});

describe('whereFrom', () => {
  it('gives a result’s formula and an input’s origin', () => {
    expect(whereFrom(results.find((it) => it.name === 'shim_stack') ?? expect.fail())).toBe(
      '=shim_count * shim_thickness',
    );
    expect(whereFrom(inputs.find((it) => it.name === 'transom_rake') ?? expect.fail())).toBe(
      'read off the boat, with: level',
    );
    expect(whereFrom(inputs.find((it) => it.name === 'shim_count') ?? expect.fail())).toContain(
      'your choice',
    );
  });
});

describe('found', () => {
  it('gives all for an empty search', () => {
    expect(found(bookEntries, '  ')).toBe(bookEntries);
  });

  it('needs every word, anywhere, and sets names that begin so first', () => {
    const hits = found(bookEntries, 'rudder gap');
    expect(hits.length).toBeGreaterThan(3);
    expect(hits[0]?.id.startsWith('rudder')).toBe(true);
    expect(found(bookEntries, 'rudder nonsense')).toEqual([]);
  });

  it('looks among a plan’s own cells too, first of all', () => {
    const own = { name: 'weight_aft', label: 'Weight aft', unit: 'kg', value: 3 };
    expect(found(entriesWith([own]), 'weight aft')[0]).toMatchObject({ kind: 'own', id: 'weight_aft' });
  });
});
