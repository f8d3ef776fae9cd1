import { describe, expect, it } from 'vitest';
import { checkVerdict } from '../../src/fitting/check-words.ts';
import { keyOf } from '../../src/fitting/key.ts';
import { orderOfWork } from '../../src/fitting/order-of-work.ts';
import { stopPoints } from '../../src/fitting/stop-points.ts';
import { tighteningOrder } from '../../src/fitting/tightening.ts';
import type { Ask } from '../../src/order/ask.ts';
import { inputNamed } from '../../src/plan/book.ts';

type Values = Readonly<Record<string, number | boolean | string>>;

const asking =
  (values: Values): Ask =>
  (name) =>
    values[name];

const two: Values = {
  strut_count: 2,
  transom_thickness: 18,
  rudder_gap_min: 50,
  shim_count: 4,
  shim_thickness: 12,
  bolt_diameter: 12,
  lower_bracket_height: 250,
  upper_bracket_height: 800,
  lower_flange_hinged: true,
};
const work = (values: Values) => orderOfWork({ ask: asking(values), units: 'mm' });
const at = (values: Values, name: string): number => work(values).findIndex((it) => it.name === name);

describe('orderOfWork', () => {
  it('keeps what cannot be undone behind what can', () => {
    const order = [
      ...['inside', 'pilot', 'first_hole', 'shaft_line', 'trial_shaft', 'second_hole', 'plumb'],
      ...['trial_struts', 'mark_feet', 'one_foot_hole', 'recheck', 'other_foot_holes', 'cut_struts'],
      ...['take_off', 'plates', 'harden', 'bed', 'cure', 'tighten_hull_lower', 'tighten_hull_feet'],
      ...['put_back', 'tighten_tubes', 'tighten_hinges', 'tighten_shaft'],
      'final',
    ].map((name) => at(two, name));
    expect(order.every((it) => it >= 0)).toBe(true);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it('gives every step a reason, tools, hands, a check and what to do when it fails', () => {
    for (const step of work(two)) {
      for (const key of ['title', 'how', 'why', 'tools', 'hands', 'check', 'otherwise'] as const) {
        expect(step[key].length, `${step.name}, ${key}`).toBeGreaterThan(2);
      }
      if (step.drills !== undefined) expect(step.caution, step.name).toMatch(/[Ee]ye protection/);
    }
    expect(new Set(work(two).map((it) => it.name)).size).toBe(work(two).length);
  });

  it('marks every step that drills, cuts, beds or tightens, and only those', () => {
    const gates = new Map(work(two).flatMap(({ name, gate }) => (gate === undefined ? [] : [[name, gate]])));
    for (const { name, title } of work(two)) {
      const wanted = /^(Drill|Pilot)/.test(title)
        ? 'drill'
        : /\bcut\b/.test(title)
          ? 'cut'
          : /^Bed/.test(title)
            ? 'bed'
            : /^Tighten/.test(title)
              ? 'tighten'
              : undefined;
      expect(gates.get(name), name).toBe(wanted);
    }
    for (const { gate, holes, name } of work(two)) if (gate === 'drill') expect(holes, name).toBeDefined();
  });

  it('has two people wherever something heavy is held, and the shaft on a line before its first bolt', () => {
    for (const name of ['shaft_line', 'trial_shaft', 'plumb', 'trial_struts', 'take_off', 'put_back'])
      expect(work(two)[at(two, name)]?.hands, name).toMatch(/^Two/);
    for (const { name, hands } of work(two))
      if (name.startsWith('tighten_')) expect(hands, name).toMatch(/^Two/);
    expect(work(two)[at(two, 'shaft_line')]?.how).toMatch(
      /Before the bracket hangs on its first bolt.*strong point/,
    );
  });

  it('tapes the holes while epoxy hardens, and waits for the makers’ hours before sealant and torque', () => {
    expect(work(two)[at(two, 'harden')]?.how).toMatch(/tape over every hole/);
    const waits = work(two).flatMap((it) => it.wait ?? []);
    expect(waits.map((it) => it.from)).toEqual(['plates', 'bed']);
    for (const { from } of waits) expect(at(two, from)).toBeGreaterThanOrEqual(0);
  });

  it('says every length in the plan’s own unit', () => {
    const inches = orderOfWork({ ask: asking(two), units: 'in' });
    const words = inches.map((it) =>
      Object.values(it)
        .filter((part) => typeof part === 'string')
        .join(' '),
    );
    expect(words.join(' ')).not.toMatch(/\d mm\b/);
    expect(words.join(' ')).toContain('3⁄8 in of the plan');
  });

  it('fixes only choices, and those of the feet in use', () => {
    for (const values of [two, { ...two, strut_count: 1 }]) {
      for (const name of work(values).flatMap((it) => it.drills ?? [])) {
        expect(inputNamed(name)?.kind, name).toBe('choice');
      }
    }
    const drilled = (values: Values) => work(values).find((it) => it.name === 'one_foot_hole')?.drills;
    expect(drilled(two)).toEqual([
      ...['port_foot_y', 'port_foot_height', 'starboard_foot_y', 'starboard_foot_height'],
    ]);
    expect(drilled({ ...two, strut_count: 1 })).toEqual(['single_foot_y', 'single_foot_height']);
  });

  it('stands behind a stop point that exists, and tightens in the order of the list', () => {
    const stops = stopPoints(asking(two), 'mm').map((it) => it.name);
    const used = work(two).flatMap((it) => it.stop ?? []);
    expect(used).toEqual(stops);
    expect(
      work(two)
        .map((it) => it.name)
        .filter((it) => it.startsWith('tighten_')),
    ).toEqual(
      tighteningOrder(asking(two))
        .slice(0, -1)
        .map((it) => keyOf(`tighten ${it.name}`)),
    );
  });

  it('speaks of the plan’s own numbers, and of one foot where there is one', () => {
    const words = (values: Values): string =>
      work(values)
        .map((it) => `${it.title} ${it.how} ${it.check}`)
        .join(' ');
    expect(words(two)).toContain('4 shims of 12 mm');
    expect(words(two)).toContain('250 mm above the waterline mark');
    expect(words({ ...two, shim_count: 1 })).toContain('1 shim of 12 mm');
    expect(words({ ...two, strut_count: 1 })).toContain('Mark the foot');
    expect(words({ ...two, strut_count: 1 })).not.toContain('both trial struts');
    expect(words({ ...two, transom_build: 'cored' })).toContain('where it cuts core');
    expect(words(two)).not.toContain('where it cuts core');
  });
});

describe('checkVerdict', () => {
  it('says what is allowed, and turns exactly at the bound', () => {
    const check = { what: 'gap', unit: 'mm', low: 50 } as const;
    expect(checkVerdict(check, 50, 'mm')).toEqual({ met: true, words: 'Met: at least 50 mm.' });
    expect(checkVerdict(check, 49.9, 'mm')?.met).toBe(false);
    expect(checkVerdict({ ...check, high: 60 }, 61, 'mm')?.words).toBe(
      'Not met: it must be between 50 mm and 60 mm.',
    );
    expect(checkVerdict({ what: 'x', unit: 'mm' }, 1, 'mm')).toBeUndefined();
  });
});
