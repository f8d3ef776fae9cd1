import { useState } from 'react';
import { changedFromBase } from '../../plan/compare.ts';
import { copyScenario, renameScenario, switchTo } from '../../plan/edit/scenarios.ts';
import type { ScenarioAnswer } from '../../session/scenario-answers.ts';
import { copyName } from '../../session/scenario-names.ts';
import { Action } from '../parts/action.tsx';
import { TextEntry } from '../parts/text-entry.tsx';
import { usePlan, useSession } from '../use-session.ts';
import { WorstLimitWords } from './worst-limit-words.tsx';

interface Props {
  /** null: the base values. */
  readonly name: string | null;
  readonly note: string | undefined;
  readonly answer: ScenarioAnswer | undefined;
  readonly onDelete: (name: string) => void;
}

const differs = (count: number): string =>
  count === 0
    ? 'nothing differs from the base'
    : `${count} ${count === 1 ? 'differs' : 'differ'} from the base`;

/** One scenario: its name, how far it is from the base, its least room, and what can be done with it. */
export function ScenarioRow({ name, note, answer, onDelete }: Props) {
  const session = useSession();
  const plan = usePlan();
  const [renaming, setRenaming] = useState(false);
  const isShown = plan.active === name;
  const title = name ?? 'Base values';

  const rename = (typed: string) => {
    const done = session.edit(`Rename “${title}”`, (it) => renameScenario(it, title, typed));
    if (done.ok) setRenaming(false);
    return done;
  };
  return (
    <li className="scenarios-row" data-scenario={name ?? ''} data-shown={isShown ? '' : undefined}>
      {renaming && name !== null ? (
        <TextEntry
          label={`New name for “${name}”`}
          labelSpoken
          value={name}
          draftKey={`scenario ${name}`}
          onPut={rename}
          focused
          onLeft={() => setRenaming(false)}
        />
      ) : (
        <button
          type="button"
          className="scenarios-switch"
          aria-pressed={isShown}
          onClick={() => session.edit(`Show ${name ?? 'the base values'}`, (it) => switchTo(it, name))}
        >
          <span className="scenarios-title type-label">{title}</span>
          <span className="scenarios-about type-small">
            {isShown ? 'shown now' : 'show'}
            {name !== null && ` · ${differs(changedFromBase(plan, name).length)}`}
            {note !== undefined && ` · ${note}`}
          </span>
        </button>
      )}
      <span className="scenarios-room type-small">
        <WorstLimitWords answer={answer} />
      </span>
      {name !== null && (
        <span className="scenarios-actions">
          <Action says={`Rename “${name}”`} onPress={() => setRenaming(true)}>
            Rename
          </Action>
          <Action
            says={`Copy “${name}”`}
            onPress={() => session.edit(`Copy “${name}”`, (it) => copyScenario(it, name, copyName(it, name)))}
          >
            Copy
          </Action>
          <Action says={`Delete “${name}”`} onPress={() => onDelete(name)}>
            Delete
          </Action>
        </span>
      )}
    </li>
  );
}
