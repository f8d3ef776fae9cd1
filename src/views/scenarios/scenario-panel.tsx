import { useMemo } from 'react';
import { compareScenarios } from '../../session/compare-scenarios.ts';
import { usePlan } from '../use-session.ts';
import { Comparison } from './comparison.tsx';
import { KeepScenario } from './keep-scenario.tsx';
import { ScenarioList } from './scenario-list.tsx';
import { useScenarioAnswers } from './use-scenario-answers.ts';
import './scenarios.css';

/** Where an edit goes while a scenario is shown, and while the base values are. */
function goesTo(active: string | null): string {
  const choices =
    active === null
      ? 'A choice you change now changes the base values.'
      : `A choice you change now changes “${active}” alone.`;
  return `${choices} What you enter under Boat or Gear changes every scenario.`;
}

/** The plan's scenarios: keep, switch, rename, copy, delete, and all of them side by side. */
export function ScenarioPanel() {
  const plan = usePlan();
  const { answers, waiting, why } = useScenarioAnswers();
  const table = useMemo(() => compareScenarios(plan, answers), [plan, answers]);
  return (
    <div className="scenarios" data-view="scenarios">
      <h2 className="type-page">Scenarios</h2>
      <p className="type-text scenarios-goes-to">{goesTo(plan.active)}</p>
      <ScenarioList answers={answers} />
      <KeepScenario />
      <Comparison table={table} answers={answers} waiting={waiting} why={why} />
    </div>
  );
}
