import { deleteOwnLimit, setOwnLimit } from '../../plan/edit/own-limits.ts';
import type { OwnLimit } from '../../plan/plan.ts';
import { changeLimit, type Side } from '../../session/own-cells/change-limit.ts';
import { Action } from '../parts/action.tsx';
import { Mark, markedOf } from '../parts/mark.tsx';
import { labelOf, shown, unitOf } from '../parts/show.ts';
import { StateWord } from '../parts/state-word.tsx';
import { TextEntry } from '../parts/text-entry.tsx';
import { useLimit, usePlan, useSession } from '../use-session.ts';

const SIDES: readonly (readonly [Side, string])[] = [
  ['low', 'At least'],
  ['high', 'At most'],
  ['near', 'Near within'],
];

/** One own limit: what it judges, its bounds, how the result stands to it. */
export function OwnLimitRow({ limit }: { readonly limit: OwnLimit }) {
  const session = useSession();
  const plan = usePlan();
  const answer = useLimit(limit.name);
  const label = labelOf(limit.result, plan);
  const unit = unitOf(limit.result, plan) || '–';
  const first = plan.units === 'in' ? 'in' : 'mm';
  const words = (value: number | undefined): string => (value === undefined ? '' : shown(value, unit, first));
  return (
    <li className="own-cells-limit" data-limit={limit.name} data-state={answer?.verdict.state}>
      <span className="own-cells-judged type-label">{label}</span>
      {SIDES.map(([side, title]) => (
        <TextEntry
          key={side}
          label={title}
          value={words(limit[side])}
          draftKey={`own limit ${side} ${limit.name}`}
          onPut={(typed) =>
            session.edit(`Limit on ${label}`, (it) => {
              const read = changeLimit(it, limit, side, typed);
              return read.ok ? setOwnLimit(it, read.limit) : read;
            })
          }
        />
      ))}
      <span className="own-cells-state" aria-live="polite">
        {answer !== undefined && (
          <>
            <Mark small limit={markedOf(answer)} />
            <StateWord state={answer.verdict.state} />
            <span className="type-small">
              {answer.value === undefined ? answer.why : shown(answer.value, unit, first)}
            </span>
          </>
        )}
      </span>
      <Action
        says={`Delete the limit on ${label}`}
        onPress={() => session.edit(`Delete the limit on ${label}`, (it) => deleteOwnLimit(it, limit.name))}
      >
        Delete
      </Action>
    </li>
  );
}
