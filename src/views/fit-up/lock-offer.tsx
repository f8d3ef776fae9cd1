import { inputNamed } from '../../plan/book.ts';
import type { Edited } from '../../plan/edit/edited.ts';
import { setLocked } from '../../plan/edit.ts';
import type { Plan } from '../../plan/plan.ts';
import { Action } from '../parts/action.tsx';
import { Icon } from '../parts/icon.tsx';
import { usePlan, useSession } from '../use-session.ts';

const lockAll = (plan: Plan, names: readonly string[]): Edited =>
  names.reduce<Edited>((so, name) => (so.ok ? setLocked(so.plan, name, true) : so), { ok: true, plan });

/** Offers to lock what a step's holes have fixed, or says that it is locked. */
export function LockOffer({ drills, title }: { readonly drills: readonly string[]; readonly title: string }) {
  const session = useSession();
  const { locked } = usePlan();
  const open = drills.filter((name) => !locked.has(name));
  const words = drills.map((name) => inputNamed(name)?.short ?? name).join(', ');
  if (open.length === 0) {
    return (
      <p className="fit-up-locked type-small">
        <Icon name="lock" /> Locked as drilled: {words}. Nothing here will propose to move it.
      </p>
    );
  }
  return (
    <Action icon="lock" onPress={() => session.edit(`Lock on: ${title}`, (plan) => lockAll(plan, open))}>
      {`Lock as drilled: ${words}`}
    </Action>
  );
}
