// The look comes first, so that a view's own rules stand over it.
import '../views/look/tokens.css';
import '../views/look/type.css';
import '../views/look/base.css';
import '../views/look/print.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { newPlan } from '../plan/new-plan.ts';
import { Session } from '../session/session.ts';
import { SessionContext } from '../views/use-session.ts';
import { App } from './app.tsx';
import { boot } from './boot.ts';
import { Kept } from './kept.ts';
import { LastResort } from './last-resort.tsx';
import { savePlan } from './save-plan.ts';

const page = document.getElementById('page');
if (page === null) throw new Error('The page has no place to stand in.');

const session = new Session(newPlan('New plan'));
const kept = new Kept();

createRoot(page).render(
  <StrictMode>
    <SessionContext value={session}>
      <LastResort onSave={() => savePlan(session.plan)}>
        <App kept={kept} />
      </LastResort>
    </SessionContext>
  </StrictMode>,
);

// Until the kept plan is shown nothing can be typed that its arrival would wipe out.
page.inert = true;
page.setAttribute('aria-busy', 'true');
const started = (): void => {
  page.inert = false;
  page.removeAttribute('aria-busy');
};
requestAnimationFrame(() => {
  boot(session, kept).then(started, (error: unknown) => {
    started();
    throw error;
  });
});
