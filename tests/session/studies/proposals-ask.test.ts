import { describe, expect, it } from 'vitest';
import { setLocked } from '../../../src/plan/edit.ts';
import { type Plan, readingOf } from '../../../src/plan/plan.ts';
import { freeChoices, freedAmong, heldBy, usuallyFreed } from '../../../src/session/studies/free-choices.ts';
import { proposalsAsk } from '../../../src/session/studies/proposals-ask.ts';
import { inputsOf } from '../../../src/studies/proposals/ask.ts';
import { contentsOf } from '../../../src/workbook/contents.ts';
import { uses } from '../../../src/workbook/loops.ts';
import { planFrom } from '../../plan/edit/edits.ts';
import { demoPlan } from '../../studies/plan-points.ts';

const askOf = (plan: Plan, free: readonly string[] = usuallyFreed(2)) =>
  proposalsAsk({
    plan,
    scenario: plan.active,
    free,
    value: (name) => readingOf(plan, name)?.value ?? null,
    uses: uses(contentsOf(plan, plan.active)),
    stepOf: (cell) => cell.step ?? 1,
  });

describe('what a search for proposals may move', () => {
  it('leaves out what is drilled', () => {
    const plan = planFrom(setLocked(demoPlan(), 'port_foot_height', true));
    const feet = freeChoices.find((it) => it.name === 'feet_height');
    expect(feet && heldBy(plan, feet)).toBe('drilled');
    const moved = inputsOf(askOf(plan));
    expect(moved).not.toContain('port_foot_height');
    expect(moved).not.toContain('starboard_foot_height');
    expect(moved).toContain('upper_bracket_height');
  });

  it('moves no input by two choices', () => {
    const freed = freedAmong(demoPlan(), ['feet_aside', 'port_foot_y', 'starboard_foot_y']);
    expect(freed.map((it) => it.name)).toEqual(['feet_aside']);
  });

  it('offers nothing that is not a choice of the mount, and no bound', () => {
    const names = freeChoices.flatMap((it) => it.moves.map((move) => move.input));
    for (const name of ['rudder_gap_min', 'lean_max', 'boat_speed', 'plate_area'])
      expect(names).not.toContain(name);
    expect(names).toContain('strut_count');
  });

  it('gives each choice the values on its steps, where it stands among them', () => {
    const { freed, present } = askOf(demoPlan());
    const shims = freed.find((it) => it.name === 'shim_count');
    expect(shims?.values).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    for (const it of freed) {
      const at = inputsOf({ freed }).indexOf(it.moves[0]?.input ?? '');
      expect(it.values, it.name).toContain(present[at]);
      expect([...it.values].sort((a, b) => a - b)).toEqual(it.values);
    }
  });
});

it('knows which limits follow from what might be given way on', () => {
  const limitsOf = (name: string) => askOf(demoPlan()).loosened.find((it) => it.name === name)?.limits;
  expect(limitsOf('rudder_gap_min')).toEqual(
    expect.arrayContaining(['rudder_gap', 'rudder_gap_swung', 'shaft_gap']),
  );
  expect(limitsOf('rudder_gap_min')).not.toContain('bearing_gap');
  // The reach of the bracket moves the shaft and with it nearly everything aft, but not what lies along it.
  expect(limitsOf('lower_reach')).toEqual(expect.arrayContaining(['rudder_gap', 'bolt_utilisation']));
  expect(limitsOf('lower_reach')).not.toContain('drive_headroom');
});

it('gives way on bounds and measures of parts alone: on no strength, load or factor', () => {
  const names = askOf(demoPlan()).loosened.map((it) => it.name);
  expect(names).toEqual(expect.arrayContaining(['rudder_gap_min', 'bearing_gap_max', 'shaft_length']));
  for (const name of [
    'load_safety',
    'bolt_safety',
    'boat_speed',
    'stock_yield',
    'laminate_shear',
    'dynamic_factor',
  ]) {
    expect(names).not.toContain(name);
  }
});
