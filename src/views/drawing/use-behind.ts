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
  const { value } = useStudy(
    exists && scenario !== plan.active
      ? drawnBehind(plan, scenario, session.workbook?.names ?? [])
      : undefined,
  );
  return useMemo(() => (value === undefined ? undefined : valuesOf(value)), [value]);
}
