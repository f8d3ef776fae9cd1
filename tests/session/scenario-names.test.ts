import { describe, expect, it } from 'vitest';
import { copyScenario, keepScenario } from '../../src/plan/edit.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { copyName, nextScenarioName } from '../../src/session/scenario-names.ts';

const withScenarios = (...names: string[]): Plan =>
  names.reduce((plan, name) => {
    const kept = keepScenario(plan, name);
    if (!kept.ok) throw new Error(kept.why);
    return kept.plan;
  }, newPlan(''));

describe('copyName', () => {
  it('counts on while a copy is there', () => {
    expect(copyName(withScenarios('Low'), 'Low')).toBe('Low, copy');
    expect(copyName(withScenarios('Low', 'Low, copy'), 'Low')).toBe('Low, copy 2');
  });

  it('makes a name the plan takes, however long the original', () => {
    const long = `${'a'.repeat(62)}😀`;
    const plan = withScenarios(long);
    const name = copyName(plan, long);
    expect(name).toBe(`${'a'.repeat(58)}, copy`);
    expect(copyScenario(plan, long, name).ok).toBe(true);
  });
});

describe('nextScenarioName', () => {
  it('is one that no scenario has', () => {
    expect(nextScenarioName(withScenarios())).toBe('Scenario 1');
    expect(nextScenarioName(withScenarios('Low', 'Scenario 3'))).toBe('Scenario 4');
  });
});
