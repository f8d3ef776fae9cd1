import { describe, expect, it } from 'vitest';
import { newPlan as newPlanScene } from '../../src/drawings/new-plan.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { measuredFirst, nothingRead } from '../../src/session/nothing-read.ts';
import { Session } from '../../src/session/session.ts';

describe('a plan in which nothing is read', () => {
  it('is one as the template leaves it, until a reading is entered or a choice is made', () => {
    const session = new Session(newPlan('New plan'));
    expect(nothingRead(session.plan)).toBe(true);
    expect(session.enter('transom_rake', '-10')).toEqual({ ok: true });
    expect(nothingRead(session.plan)).toBe(false);
    session.undo();
    expect(nothingRead(session.plan)).toBe(true);
    expect(session.choose('shim_count', 5)).toEqual({ ok: true });
    expect(nothingRead(session.plan)).toBe(false);
  });

  it('lists the readings as the drawing numbers them', () => {
    expect(newPlanScene().points.map((it) => it.name)).toEqual(measuredFirst.map((it) => it.name));
  });

  it('lights the place that is pointed at', () => {
    const lit = newPlanScene('transom_top').shapes.filter((it) => it.kind === 'label' && it.lit === true);
    expect(lit).toHaveLength(1);
    expect(lit[0]).toMatchObject({ part: 'transom_top', lines: ['2'] });
  });
});
