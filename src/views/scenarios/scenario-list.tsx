import { useState } from 'react';
import { deleteScenario } from '../../plan/edit/scenarios.ts';
import type { Plan } from '../../plan/plan.ts';
import type { ByScenario } from '../../session/scenario-answers.ts';
import { Action } from '../parts/action.tsx';
import { usePlan, useSession } from '../use-session.ts';
import { ScenarioRow } from './scenario-row.tsx';

/** What was just deleted, and the plan it left: any later edit takes this note away. */
interface Deleted {
  readonly name: string;
  readonly place: number;
  readonly plan: Plan;
}

interface Props {
  readonly answers: ByScenario;
}

/** The base values and every scenario, one of them shown; undo stands where one was deleted. */
export function ScenarioList({ answers }: Props) {
  const session = useSession();
  const plan = usePlan();
  const [gone, setGone] = useState<Deleted>();

  const onDelete = (name: string): void => {
    const place = plan.scenarios.findIndex((it) => it.name === name);
    const done = session.edit(`Delete “${name}”`, (it) => deleteScenario(it, name));
    if (done.ok) setGone({ name, place, plan: session.plan });
  };
  const rows = plan.scenarios.map(({ name, note }) => (
    <ScenarioRow key={name} name={name} note={note} answer={answers.get(name)} onDelete={onDelete} />
  ));
  if (gone !== undefined && gone.plan === plan) {
    rows.splice(
      gone.place,
      0,
      <li key=" " className="scenarios-gone">
        <span role="status">“{gone.name}” is deleted.</span>
        <Action focused icon="undo" says={`Undo: bring “${gone.name}” back`} onPress={() => session.undo()}>
          Undo
        </Action>
      </li>,
    );
  }
  return (
    <ul className="scenarios-list" aria-label="Base values and scenarios">
      <ScenarioRow name={null} note={undefined} answer={answers.get(null)} onDelete={onDelete} />
      {rows}
    </ul>
  );
}
