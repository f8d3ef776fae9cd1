import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import { drawnBehind } from '../../src/session/drawn-behind.ts';
import { evaluatorOver } from '../../src/session/study-evaluator.ts';
import { finish } from '../../src/studies/study.ts';
import { values } from '../../src/studies/values.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const opened = openPlan(readFileSync('demo-data/start.plan.json', 'utf8'));
if (!opened.ok) throw new Error(opened.why);
const { plan } = opened;

describe('the scenario drawn behind', () => {
  it('keeps its own values whatever the workbook shows afterwards', () => {
    const workbook = new Workbook(plan, null);
    const over = (scenario: string | null) => evaluatorOver(workbook, plan, scenario);
    const scenario = 'Upper bracket raised';
    const raised = drawnBehind(plan, scenario, finish(values(over(scenario), workbook.names)));
    over(null).evaluate(new Map());
    // With the bracket at 900 the drive unit is 20 mm too long for the tube, at 800 it leaves 80 free.
    expect(raised('upper_bracket_height')).toBe(900);
    expect(raised('drive_headroom')).toBeCloseTo(-20, 9);
    expect(workbook.answer('drive_headroom').value).toBeCloseTo(80, 9);
    expect(raised('lower_flange_hinged')).toBe(true);
    workbook.destroy();
  });
});
