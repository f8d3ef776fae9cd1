import { useState } from 'react';
import type { Plan } from '../../plan/plan.ts';
import type { Copy } from '../../session/plan-file/copies.ts';
import { useSession } from '../use-session.ts';
import { KeepNow, type KeepShown } from './keep-now.tsx';
import { MailPlan } from './mail-plan.tsx';
import { OpenFile } from './open-file.tsx';
import { PlanFacts } from './plan-facts.tsx';
import { SaveFile } from './save-file.tsx';
import { StartAnew } from './start-anew.tsx';
import './plan-file.css';

/** What the panel needs of the page around it. */
export interface PlanPanelProps {
  /** How the plan is kept in this browser; absent while that is not known. */
  readonly keep: KeepShown | undefined;
  /** Takes the right to keep the plan from another window. */
  readonly onTakeOver?: () => void;
  /** Hands the plan to the browser as a file, and gives back the file's name. */
  readonly onSave: (plan: Plan) => string;
  /** Hands a text to the browser as a file of that name. */
  readonly onSaveText: (name: string, text: string) => void;
}

/** The last copy of each session's plan outlives this panel. */
const copies = new WeakMap<object, Copy>();

/** The plan as a document: its name, units and notes; kept where; saved, opened, sent, started anew. */
export function PlanPanel({ keep, onTakeOver, onSave, onSaveText }: PlanPanelProps) {
  const session = useSession();
  const [copy, setCopy] = useState<Copy | undefined>(() => copies.get(session));
  const save = (): void => {
    const { plan } = session;
    const saved = { name: onSave(plan), plan };
    copies.set(session, saved);
    setCopy(saved);
  };
  return (
    <div className="plan-file" data-view="plan">
      <h2 className="type-page">Plan</h2>
      <KeepNow keep={keep} onTakeOver={onTakeOver} onSave={save} />
      <PlanFacts />
      <SaveFile copy={copy} onSave={save} />
      <OpenFile onSaveText={onSaveText} />
      <MailPlan onSave={save} />
      <StartAnew />
    </div>
  );
}
