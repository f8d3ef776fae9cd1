import { useId, useState } from 'react';
import { keepScenario } from '../../plan/edit/scenarios.ts';
import { nextScenarioName } from '../../session/scenario-names.ts';
import { Action } from '../parts/action.tsx';
import { usePlan, useSession } from '../use-session.ts';

/** Keeps the choices as they stand now under a name of their own. */
export function KeepScenario() {
  const session = useSession();
  const plan = usePlan();
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [why, setWhy] = useState<string>();
  const name = typed ?? nextScenarioName(plan);

  const keep = (): void => {
    const done = session.edit(`Keep “${name}”`, (it) => keepScenario(it, name));
    setWhy(done.ok ? undefined : done.why);
    if (done.ok) setTyped(undefined);
  };
  return (
    <form
      className="scenarios-keep"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <label className="type-small base-soft" htmlFor={id}>
        Name for the choices as they stand now
      </label>
      <input
        id={id}
        className="scenarios-name"
        type="text"
        autoComplete="off"
        value={name}
        aria-invalid={why === undefined ? undefined : true}
        aria-describedby={why === undefined ? undefined : `${id}why`}
        onChange={(event) => setTyped(event.target.value)}
        onFocus={(event) => event.target.select()}
      />
      <Action plate submits>
        Keep as a scenario
      </Action>
      {why !== undefined && (
        <p className="scenarios-why type-small" id={`${id}why`} role="alert">
          {why}
        </p>
      )}
    </form>
  );
}
