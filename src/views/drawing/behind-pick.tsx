import { useId } from 'react';
import { usePlan } from '../use-session.ts';

/** Stands for the base values in the list; no scenario is called nothing. */
const BASE = 'base';

interface Props {
  /** The scenario behind; null for the base values, undefined for none. */
  readonly behind: string | null | undefined;
  readonly onBehind: (scenario: string | null | undefined) => void;
}

/** Which other scenario is drawn behind the one shown; nothing to pick in a plan without scenarios. */
export function BehindPick({ behind, onBehind }: Props) {
  const { active, scenarios } = usePlan();
  const id = useId();
  const others = [null, ...scenarios.map((it) => it.name)].filter((it) => it !== active);
  if (others.length === 0) return null;
  const isShown = behind !== undefined && others.includes(behind);
  return (
    <span className="drawing-behind type-small">
      <label className="base-spoken" htmlFor={id}>
        Drawn behind
      </label>
      <select
        id={id}
        className="drawing-behind-pick"
        value={isShown ? (behind === null ? BASE : `scenario ${behind}`) : ''}
        onChange={({ target: { value } }) =>
          onBehind(value === '' ? undefined : value === BASE ? null : value.slice('scenario '.length))
        }
      >
        <option value="">Nothing behind</option>
        {others.map((it) => (
          <option key={it ?? BASE} value={it === null ? BASE : `scenario ${it}`}>
            {it ?? 'Base values'} behind
          </option>
        ))}
      </select>
    </span>
  );
}
