import { useSyncExternalStore } from 'react';
import { LostPlate } from '../views/plan-file/lost-plate.tsx';
import { PlanPanel } from '../views/plan-file/plan-panel.tsx';
import { useSession } from '../views/use-session.ts';
import { downloadText } from './keep/download-text.ts';
import type { Kept } from './kept.ts';
import { savePlan } from './save-plan.ts';

interface Props {
  readonly kept: Kept;
}

/** The page Plan, wired to this browser's store and files. */
export function PlanDoor({ kept }: Props) {
  const session = useSession();
  const keep = useSyncExternalStore(kept.state.subscribe, () => kept.state.value);
  return (
    <PlanPanel
      keep={keep}
      onTakeOver={() => void kept.keeper?.takeOver(session.plan, session.journal)}
      onSave={savePlan}
      onSaveText={downloadText}
    />
  );
}

/** One ink plate while the plan is not kept, with the doors out. */
export function LostDoor({ kept }: Props) {
  const session = useSession();
  const keep = useSyncExternalStore(kept.state.subscribe, () => kept.state.value);
  if (keep?.state !== 'not kept') return null;
  return (
    <LostPlate
      why={keep.why}
      onSave={() => savePlan(session.plan)}
      {...(keep.elsewhere === true
        ? { onTakeOver: () => void kept.keeper?.takeOver(session.plan, session.journal) }
        : {})}
    />
  );
}
