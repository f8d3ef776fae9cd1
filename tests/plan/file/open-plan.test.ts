import { describe, expect, it } from 'vitest';
import { inputs } from '../../../src/plan/book.ts';
import { CURRENT_VERSION } from '../../../src/plan/file/migrations.ts';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';

interface Row {
  [key: string]: unknown;
  name: string;
}

interface Document {
  [key: string]: unknown;
  inputs: Row[];
}

const fresh = (): Document => JSON.parse(writePlan(newPlan('Boat'))) as Document;

const row = (document: Document, name: string): Row => document.inputs.find((it) => it.name === name) as Row;

/** Opens a fresh plan's document after a change to it. */
const changed = (change: (document: Document) => void) => {
  const document = fresh();
  change(document);
  return openPlan(JSON.stringify(document));
};

/** Where an input stands in a plan's file. */
const at = (name: string): string =>
  `inputs, row ${1 + fresh().inputs.findIndex((it) => it.name === name)} (${name})`;

const override = (name: string, value: unknown) => ({ name, value, origin: 'choice' });
const scenario = (name: string, ...overrides: object[]) => ({ name, overrides });

describe('what is no plan', () => {
  it.each([
    '',
    'hello',
    '[]',
    'null',
    '{}',
    '{"kind":"other"}',
    '{"kind":',
    'PK\u0003\u0004',
    '{"title":"a"} x',
  ])('says so: %j', (text) => {
    expect(openPlan(text)).toMatchObject({ ok: false, reason: 'not a plan' });
  });

  it('reads past a byte order mark', () => {
    expect(openPlan(`\uFEFF${writePlan(newPlan('Boat'))}`)).toMatchObject({ ok: true });
  });
});

describe('caps', () => {
  it('refuses a file over 2 MB before it is read', () => {
    const text = writePlan(newPlan('Boat'));
    expect(openPlan(text.padEnd(2_000_000)).ok).toBe(true);
    expect(openPlan(text.padEnd(2_000_001))).toMatchObject({ ok: false, reason: 'too large' });
    // Characters of three bytes: under 2 million of them, over 2 MB.
    expect(openPlan(text + '\u3000'.repeat(700_000))).toMatchObject({ ok: false, reason: 'too large' });
  });

  it('refuses more than 2,000 rows', () => {
    const grown = (count: number) =>
      changed((it) => {
        it.tables = [{ name: 'profile', columns: ['z'], rows: Array(count).fill([1]) }];
      });
    const spare = 2_000 - inputs.length - 1;
    expect(grown(spare).ok).toBe(true);
    expect(grown(spare + 1)).toMatchObject({ ok: false, reason: 'too large' });
  });

  it('refuses a text over 4,096 characters and a name over 64', () => {
    const noted = (length: number) =>
      changed((it) => {
        it.notes = 'n'.repeat(length);
      });
    expect(noted(4_096).ok).toBe(true);
    expect(noted(4_097)).toMatchObject({ ok: false, reason: 'too large' });
    const titled = (length: number) =>
      changed((it) => {
        it.title = 't'.repeat(length);
      });
    expect(titled(64).ok).toBe(true);
    expect(titled(65)).toMatchObject({
      ok: false,
      reason: 'too large',
      where: 'title',
      why: 'title is longer than 64 characters.',
    });
  });
});

describe('versions', () => {
  it('tells a newer file from a damaged one', () => {
    expect(
      changed((it) => {
        it.version = CURRENT_VERSION + 1;
      }),
    ).toMatchObject({ ok: false, reason: 'too new' });
    expect(
      changed((it) => {
        it.version = CURRENT_VERSION + 1;
        it.inputs = [];
        it.more = 1;
      }),
    ).toMatchObject({ reason: 'too new' });
    for (const version of [0, -1, 1.5, '1', null]) {
      expect(
        changed((it) => {
          it.version = version;
        }),
      ).toMatchObject({ ok: false, reason: 'damaged', where: 'version' });
    }
  });
});

describe('damage is named with its place', () => {
  it.each<[string, (it: Document) => void, string, string]>([
    [
      'a wrong type',
      (it) => {
        row(it, 'tube_od').off_by = 'two';
      },
      `${at('tube_od')}, off_by`,
      'must be a number, not a text',
    ],
    [
      'a missing list',
      (it) => {
        delete it.limits;
      },
      'limits',
      'limits is missing',
    ],
    [
      'an unknown key',
      (it) => {
        row(it, 'tube_od').colour = 1;
      },
      at('tube_od'),
      'has colour, which a plan does not have there',
    ],
    [
      'an unknown key of the plan',
      (it) => {
        it.macro = 1;
      },
      'nowhere',
      'The plan has macro',
    ],
    [
      'an unknown origin',
      (it) => {
        row(it, 'tube_od').origin = 'guess';
      },
      `${at('tube_od')}, origin`,
      'must be reading, manual, stand-in, assumed or choice, not guess',
    ],
    [
      'an origin that cannot be turned into a text',
      (it) => {
        row(it, 'tube_od').origin = { toString: 0, valueOf: 0 };
      },
      `${at('tube_od')}, origin`,
      'must be reading, manual, stand-in, assumed or choice, not an object',
    ],
    [
      'unknown units',
      (it) => {
        it.units = 'ft';
      },
      'units',
      'must be mm, in or both, not ft',
    ],
    [
      'an unknown input',
      (it) => {
        it.inputs.push({ name: 'tube_odd', value: 1, origin: 'reading' });
      },
      'inputs',
      'no input named tube_odd',
    ],
    [
      'an input twice',
      (it) => {
        it.inputs.push(row(it, 'tube_od'));
      },
      `inputs, row ${inputs.length + 1} (tube_od)`,
      'has tube_od twice',
    ],
    [
      'a value out of bounds',
      (it) => {
        row(it, 'transom_rake').value = 80;
      },
      at('transom_rake'),
      'cannot be 80 deg',
    ],
    [
      'half a shim',
      (it) => {
        it.scenarios = [scenario('A', override('shim_count', 3.5))];
      },
      'scenarios, row 1 (A), overrides, row 1 (shim_count)',
      'whole number',
    ],
    [
      'values that clash',
      (it) => {
        row(it, 'tube_wall').value = 31;
      },
      'inputs',
      'the wall of the shaft tube must be less than half its diameter',
    ],
    [
      'values that clash in one scenario',
      (it) => {
        it.scenarios = [scenario('A'), scenario('B', override('transom_top', 30))];
      },
      'scenarios, B',
      'In the scenario “B”',
    ],
    [
      'a scenario twice',
      (it) => {
        it.scenarios = [scenario('A'), scenario(' A ')];
      },
      'scenarios, row 2 (A)',
      'has A twice',
    ],
    [
      'a scenario written alike',
      (it) => {
        it.scenarios = [scenario('é'), scenario('e\u0301')];
      },
      'scenarios, row 2 (é)',
      'twice',
    ],
    [
      'a scenario shown that is not there',
      (it) => {
        it.active = 'C';
      },
      'active',
      'shows the scenario “C”',
    ],
    [
      'a scenario without a name',
      (it) => {
        it.scenarios = [scenario('  ')];
      },
      'scenarios, row 1 (  )'.replace('(  )', '( )'),
      'is empty',
    ],
    [
      'a lock on something that is no choice',
      (it) => {
        it.locked = ['tube_od'];
      },
      'locked, row 1',
      'tube_od is no choice',
    ],
    [
      'an own cell with the name of a result',
      (it) => {
        it.own_cells = [{ name: 'standoff', label: '', unit: 'mm', value: 1 }];
      },
      'own_cells, row 1 (standoff)',
      'already',
    ],
    [
      'an own cell that reads like a place',
      (it) => {
        it.own_cells = [{ name: 'ab12', label: '', unit: 'mm', value: 1 }];
      },
      'own_cells, row 1 (ab12)',
      'column and a row',
    ],
    [
      'own cells twice',
      (it) => {
        it.own_cells = [1, 2].map((value) => ({ name: 'mine', label: '', unit: 'mm', value }));
      },
      'own_cells, row 2 (mine)',
      'already',
    ],
    [
      'a formula without its =',
      (it) => {
        it.own_cells = [{ name: 'mine', label: '', unit: 'mm', value: 1, formula: 'standoff' }];
      },
      'own_cells, row 1 (mine), formula',
      'must start with =',
    ],
    [
      'a limit on nothing',
      (it) => {
        it.limits = [{ name: 'mine', result: 'nothing', low: 1, near: 0 }];
      },
      'limits, row 1 (mine)',
      'no result or own cell',
    ],
    [
      'a limit without a bound',
      (it) => {
        it.limits = [{ name: 'mine', result: 'standoff', near: 0 }];
      },
      'limits, row 1 (mine)',
      'low bound, a high bound or both',
    ],
    [
      'a limit upside down',
      (it) => {
        it.limits = [{ name: 'mine', result: 'standoff', low: 2, high: 1, near: 0 }];
      },
      'limits, row 1 (mine)',
      'above its high bound',
    ],
    [
      'an uneven table',
      (it) => {
        it.tables = [{ name: 'profile', columns: ['z', 'x'], rows: [[1, 2], [3]] }];
      },
      'tables, row 1 (profile), rows, row 2',
      'has 2 columns, but its row 2 has 1',
    ],
    [
      'a setting twice',
      (it) => {
        it.studies = [{ study: 'sweep', settings: [1, 2].map((value) => ({ name: 'n', value })) }];
      },
      'studies, row 1 (sweep), settings, row 2 (n)',
      'twice',
    ],
    [
      'a setting that reaches a prototype',
      (it) => {
        it.studies = [{ study: 'sweep', settings: [{ name: '__proto__', value: 1 }] }];
      },
      'studies, row 1 (sweep), settings, row 1 (__proto__), name',
      'must be letters',
    ],
  ])('%s', (_what, change, where, why) => {
    const opened = changed(change);
    expect(opened).toMatchObject({
      ok: false,
      reason: 'damaged',
      why: expect.stringContaining(why) as string,
    });
    expect(opened.ok ? '' : (opened.where ?? 'nowhere')).toBe(where);
    expect(opened.ok ? '' : opened.why).toMatch(/^[^\n]*[.]$/);
  });

  it.each(['title', 'notes', 'app'])('refuses signs that turn a text round, in the %s', (key) => {
    for (const sign of ['\u202E', '\u2066', '\u200F', '\u061C']) {
      const opened = changed((it) => {
        it[key] = `a${sign}b`;
      });
      expect(opened).toMatchObject({ ok: false, reason: 'damaged', where: key });
      expect(opened.ok ? '' : opened.why).not.toContain(sign);
    }
  });

  it('refuses them in the texts of a reading, and never repeats them', () => {
    for (const key of ['typed', 'unit', 'who', 'when', 'with', 'note', 'value']) {
      const opened = changed((it) => {
        row(it, 'tube_od')[key] = 'a\u202Eb';
      });
      expect(opened).toMatchObject({ ok: false, reason: 'damaged' });
      expect(JSON.stringify(opened)).not.toContain('\u202E');
    }
  });

  it('refuses a lone half of a character and a NUL', () => {
    expect(
      changed((it) => {
        it.notes = '\uD800';
      }),
    ).toMatchObject({ reason: 'damaged', where: 'notes' });
    expect(
      changed((it) => {
        it.notes = 'a\u0000';
      }),
    ).toMatchObject({ reason: 'damaged', where: 'notes' });
    expect(
      changed((it) => {
        it.notes = 'a\n\tb';
      }),
    ).toMatchObject({ ok: true });
    expect(
      changed((it) => {
        it.title = 'a\nb';
      }),
    ).toMatchObject({ reason: 'damaged', where: 'title' });
  });

  it('refuses keys that reach a prototype', () => {
    const text = writePlan(newPlan('Boat'));
    for (const key of ['__proto__', 'constructor', 'prototype']) {
      const opened = openPlan(text.replace('"title"', `"${key}": { "polluted": 1 }, "title"`));
      expect(opened).toMatchObject({ ok: false, reason: 'damaged' });
    }
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });

  it('says on which line a cut file ends', () => {
    const lines = writePlan(newPlan('Boat')).split('\n');
    const opened = openPlan(lines.slice(0, 20).join('\n'));
    expect(opened).toMatchObject({ ok: false, reason: 'damaged', where: 'line 20' });
  });
});

describe('what is mended, and said', () => {
  it('takes missing inputs from the workbook as stand-ins', () => {
    const opened = changed((it) => {
      it.inputs = it.inputs.filter((one) => one.name !== 'tube_od' && one.name !== 'shim_count');
    });
    expect(opened.ok && opened.notes).toEqual([
      "These 2 inputs are missing from the file and hold the workbook's own stand-ins: tube_od, shim_count.",
    ]);
    expect(opened.ok && opened.plan.inputs.get('tube_od')).toEqual({
      value: 60.3,
      offBy: 0.5,
      origin: 'stand-in',
    });
    expect(opened.ok && [...opened.plan.inputs.keys()]).toEqual(inputs.map((cell) => cell.name));
  });

  it('drops a typed text that says something else than its value', () => {
    const typed = (text: string, unit: string) =>
      changed((it) => {
        Object.assign(row(it, 'transom_top'), { value: 889, typed: text, unit });
      });
    for (const [text, unit] of [
      ['35 in', 'in'],
      ['35', 'in'],
      ['889', 'mm'],
      ['88,9 cm', 'cm'],
    ] as const) {
      const opened = typed(text, unit);
      expect(opened.ok && [opened.notes, opened.plan.inputs.get('transom_top')?.typed]).toEqual([[], text]);
    }
    for (const text of ['no length', '889 kn', '']) {
      const opened = typed(text, 'mm');
      expect(opened.ok && [opened.notes.length, opened.plan.inputs.get('transom_top')?.typed]).toEqual([
        1,
        undefined,
      ]);
    }
    const opened = typed('900 mm', 'mm');
    expect(opened.ok && opened.plan.inputs.get('transom_top')).toEqual({
      value: 889,
      offBy: 10,
      origin: 'stand-in',
    });
    expect(opened.ok && opened.notes).toEqual([
      'The text kept for transom_top, 900 mm, does not say what its value is: it was dropped, the value stands.',
    ]);
  });

  it('drops a value that a formula cannot have had, and keeps the formula', () => {
    const opened = changed((it) => {
      Object.assign(row(it, 'tube_od'), { value: -5, formula: '=tube_wall * 2' });
    });
    expect(opened.ok && opened.plan.inputs.get('tube_od')).toMatchObject({
      value: null,
      formula: '=tube_wall * 2',
    });
    expect(opened.ok && opened.notes).toHaveLength(1);
  });
});
