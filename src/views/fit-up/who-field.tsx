import { setHandover } from '../../plan/edit.ts';
import { TextEntry } from '../parts/text-entry.tsx';
import { usePlan, useSession } from '../use-session.ts';

/** Who is at work: kept with every tick and reading from then on. */
export function WhoField() {
  const session = useSession();
  const who = usePlan().fit.handover.get('fitted_by') ?? '';
  return (
    <TextEntry
      label="Who is at work: kept with every tick and reading"
      value={who}
      draftKey="fit-up who"
      onPut={(text) => session.edit('Fitted by', (plan) => setHandover(plan, 'fitted_by', text.trim()))}
    />
  );
}
