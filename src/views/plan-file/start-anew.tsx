import { newPlan } from '../../plan/new-plan.ts';
import { Action } from '../parts/action.tsx';
import { useSession } from '../use-session.ts';

/** Begins another plan; undo brings this one back. */
export function StartAnew() {
  const session = useSession();
  return (
    <section className="plan-file-part">
      <h3 className="type-section">Another plan</h3>
      <p className="type-small">
        It takes this plan’s place; undo brings this one back. Save this one as a file first if you want both.
      </p>
      <div className="plan-file-doors">
        <a className="action" href="#/own-boat">
          <span className="action-word">Plan my own boat, step by step</span>
        </a>
        <Action onPress={() => session.open(newPlan('New plan'), 'New plan')}>
          New plan, all values stand-ins
        </Action>
      </div>
    </section>
  );
}
