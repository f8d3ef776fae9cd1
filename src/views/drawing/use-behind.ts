import { useMemo } from 'react';
import type { Values } from '../../drawings/values.ts';
import { scenarioNamed } from '../../plan/plan.ts';
import { drawnBehind } from '../../session/drawn-behind.ts';
import { useStudy } from '../parts/use-study.ts';
import { usePlan, useSession } from '../use-session.ts';
import { valuesOf } from './session-values.ts';

/** Values of the scenario to be drawn behind, once worked out; undefined asks for none, null for the base values. */
export function useBehind(scenario: string | null | undefined): Values | undefined {
  const session = useSession();
  const plan = usePlan();
  const exists = scenario === null || (scenario !== undefined && scenarioNamed(plan, scenario) !== undefined);
  const wanted = exists && scenario !== plan.active;
  const { value } = useStudy(
    wanted
      ? {
          study: 'values',
          ask: { scenario, names: session.workbook?.names ?? [] },
          key: `behind ${scenario ?? ''}`,
        }
      : undefined,
  );
  return useMemo(
    () =>
      value === undefined || scenario === undefined
        ? undefined
        : valuesOf(drawnBehind(plan, scenario, value)),
    [value, plan, scenario],
  );
}
