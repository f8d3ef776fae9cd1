import { describe, expect, it } from 'vitest';
import { orderList } from '../../../src/order/list/order-list.ts';
import { inputs } from '../../../src/plan/book.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { standIns } from '../../../src/plan/stand-ins.ts';
import type { Inputs } from '../../workbook/model-case.ts';
import { caseAsk } from '../case-ask.ts';

const listOf = (changes: Inputs = {}, held: readonly string[] = []) =>
  orderList({ ask: caseAsk(changes), units: 'both', profile: [] }, held);

const wordsOf = (list: ReturnType<typeof orderList>): string =>
  list
    .flatMap((it) => [
      it.title,
      it.lead,
      it.standsOn ?? '',
      ...it.notes,
      ...it.unanswered,
      ...it.tables.flatMap((t) => t.rows.flat()),
    ])
    .join('\n')
    .replaceAll('\u00a0', ' ');

describe('the order list', () => {
  it('answers every section of the case to start from', () => {
    const list = listOf();
    expect(list.flatMap((it) => it.unanswered)).toEqual([]);
    expect(list.map((it) => it.tables.reduce((sum, table) => sum + table.rows.length, 0))).toEqual([
      3, 19, 4, 3, 3, 3, 6,
    ]);
    for (const table of list.flatMap((it) => it.tables))
      for (const row of table.rows) expect(row).toHaveLength(table.heads.length);
  });

  it('says what is empty and keeps the rest', () => {
    const ask = caseAsk();
    const list = orderList(
      { ask: (name) => (name === 'plate_area' ? null : ask(name)), units: 'mm', profile: [] },
      [],
    );
    const said = list.flatMap((it) => it.unanswered);
    expect(said[0]).toMatch(
      /^No answer for the backing plates of the lower bracket: “Backing plate area under one bolt” has no value/,
    );
    expect(list.find((it) => it.title === 'Struts')?.tables).toHaveLength(2);
    const nothing = orderList({ ask: () => undefined, units: 'mm', profile: [] }, []);
    for (const it of nothing) expect([it.title, it.unanswered.length > 0]).toEqual([it.title, true]);
  });

  it('names the stand-ins it rests on, and none that the workbook does not have', () => {
    const plan = newPlan('x');
    const list = listOf({}, standIns(plan, null));
    for (const it of list) expect(it.standsOn).toMatch(/^Rests on \d+ stand-ins: “.+ before you order\.$/);
    const known = new Set(inputs.map((it) => it.name));
    expect(list.flatMap((it) => it.restsOn).filter((name) => !known.has(name))).toEqual([]);
    expect(listOf().some((it) => it.standsOn !== undefined)).toBe(false);
  });

  it('warns when one tube is enough, and when tubes are missing', () => {
    expect(wordsOf(listOf())).toContain('One tube is enough for both struts');
    expect(wordsOf(listOf({ strut_supply_length: 250, strut_supply_count: 1 }))).toContain(
      '2 tubes are needed and 1 is supplied: 1 more is to be ordered.',
    );
    expect(wordsOf(listOf({ strut_supply_count: 0 }))).toContain(
      'No tube is supplied: 1 of 1000 mm (39 3⁄8 in) is',
    );
  });

  it('keeps the lengths of struts that no tube gives, says what takes a tube more, and counts no saw of 0', () => {
    const struts = (changes: Inputs) => listOf(changes).find((it) => it.title === 'Struts');
    const short = struts({ strut_supply_length: 150 });
    expect(short?.tables.map((it) => it.rows.length)).toEqual([2]);
    expect(short?.unanswered).toHaveLength(1);
    const none = struts({ strut_end_allowance: 200 });
    expect([none?.tables[0]?.rows, none?.notes, none?.unanswered.length]).toEqual([[], [], 1]);
    expect(struts({})?.notes.join()).toContain('Each cut takes 2\u00a0mm');
    expect(struts({ saw_kerf: 0 })?.notes.join()).not.toContain('Each cut');
    // Two struts of 205.2 mm fill 412.4 mm but for the last cut, and none can be cut long.
    const tight = wordsOf(listOf({ strut_supply_length: 412.4 }));
    expect(tight).toContain('Cut 20 mm (13⁄16 in) long, to be trimmed, they take 2 tubes, not 1.');
    expect(tight).toContain('\nnothing');
    expect(tight).not.toContain('One tube is enough');
    expect(wordsOf(listOf({ strut_supply_length: 800 }))).toContain(
      'struts and trial tubes together take 2 of the 2',
    );
    expect(wordsOf(listOf({ strut_supply_length: 300, strut_supply_count: 0 }))).toContain(
      'From tubes of 300 mm (11 13⁄16 in), struts and trial tubes together would take 4; none are supplied.',
    );
  });

  it('puts the manual’s torque first, and says when there is none', () => {
    expect(wordsOf(listOf({ gear_torque: 25 }))).toContain('25 N·m (18 lbf·ft)');
    expect(wordsOf(listOf())).toContain('none entered');
  });

  it('says which way a flange needs a pad', () => {
    // R 1000, upright: 0.45 mm of 60, 1.80 mm of 120; the sealant takes up 1.
    const words = wordsOf(
      listOf({ transom_camber_radius: 1000, transom_rake: 0, foot_width: 60, foot_height: 120 }),
    );
    expect(words).toContain(
      'Hollow, flange upright: none, the sealant fills 0.5 mm (1⁄64 in). Flange lying: hollowed 1.8 mm (5⁄64 in). It is mounted upright.',
    );
    expect(words).toContain('Hollow the sheet next to the hull by 5.0 mm');
  });

  it('never calls anything safe', () => {
    for (const changes of [{}, { transom_camber_radius: 900, lower_flange_hinged: false, strut_count: 1 }])
      expect(wordsOf(listOf(changes))).not.toMatch(/\bsafe/i);
  });
});
