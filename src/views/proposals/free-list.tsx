import type { Plan } from '../../plan/plan.ts';
import { freeChoices, heldBy } from '../../session/studies/free-choices.ts';

interface Props {
  readonly plan: Plan;
  readonly free: readonly string[];
  readonly onFree: (names: readonly string[]) => void;
}

/** A choice's partners that move the same inputs; only one of them can be free. */
const rivalsOf = (name: string): readonly string[] => {
  const mine = freeChoices.find((it) => it.name === name)?.moves.map((it) => it.input) ?? [];
  return freeChoices
    .filter((it) => it.name !== name && it.moves.some((move) => mine.includes(move.input)))
    .map((it) => it.name);
};

/** The choices that the search may move, each with a tick; what is drilled stays. */
export function FreeList({ plan, free, onFree }: Props) {
  const toggle = (name: string, isFree: boolean): void => {
    const rivals = rivalsOf(name);
    onFree(isFree ? [...free.filter((it) => !rivals.includes(it)), name] : free.filter((it) => it !== name));
  };
  return (
    <fieldset className="proposals-free">
      <legend className="type-section">Let these change</legend>
      <div className="proposals-choices type-small">
        {freeChoices.map((choice) => {
          const held = heldBy(plan, choice);
          return (
            <label className="proposals-choice" key={choice.name}>
              <input
                className="base-check"
                type="checkbox"
                disabled={held !== undefined}
                checked={held === undefined && free.includes(choice.name)}
                onChange={(event) => toggle(choice.name, event.target.checked)}
              />
              {choice.label}
              {held !== undefined && `, ${held}`}
            </label>
          );
        })}
      </div>
    </fieldset>
  );
}
