import { useMemo } from 'react';
import { freeIn, proposalsCall } from '../../session/studies/proposals-call.ts';
import { inputsOf } from '../../studies/proposals/ask.ts';
import { changeWords, failingWords } from '../../studies/proposals/proposal-words.ts';
import type { Words } from '../../studies/words.ts';
import { Action } from '../parts/action.tsx';
import { useStudy } from '../parts/use-study.ts';
import { usePlan, useSession } from '../use-session.ts';

interface Props {
  readonly words: Words;
  readonly onUse: (values: ReadonlyMap<string, number>) => void;
}

/** Where no single change fixes a limit: the mount that the search proposes, or else the nearest one, with one press. */
export function MountInstead({ words, onUse }: Props) {
  const session = useSession();
  const plan = usePlan();
  const call = useMemo(() => proposalsCall(plan, session, freeIn(plan, session)), [plan, session]);
  const { value, stale, why, progress } = useStudy(call);
  if (call === undefined || why !== undefined) return null;
  if (value === undefined || stale) {
    const count =
      progress && `: ${progress.done.toLocaleString('en')} of ${progress.of.toLocaleString('en')}`;
    return <p className="base-soft">Looking for another mount{count}.</p>;
  }
  const { freed, present } = call.ask;
  const inputs = inputsOf({ freed });
  const [best] = value.proposals;
  const mount = best ?? value.conflict?.nearest;
  if (mount === undefined || mount.values.every((it, n) => it === present[n])) {
    return <p>No mount tried comes nearer to meeting every limit than the present one.</p>;
  }
  const changes = changeWords(mount, present, freed, inputs, words);
  return (
    <div className="remedy">
      <p>
        {best === undefined
          ? `Nearest mount: ${changes}. Not met there: ${failingWords(mount, words)}.`
          : `This mount meets every limit: ${changes}.`}
      </p>
      <Action
        says="Use this mount"
        onPress={() => onUse(new Map(inputs.map((name, n) => [name, mount.values[n] as number])))}
      >
        Use this mount
      </Action>
    </div>
  );
}
