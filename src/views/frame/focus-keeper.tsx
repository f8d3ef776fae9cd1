import { useEffect } from 'react';
import { focusTrail, type Trail } from './focus-trail.ts';

/** Tables that move their own focus about. */
const OWN = '[data-view="grid"]';

const isGone = (element: HTMLElement): boolean =>
  !element.isConnected ||
  element.matches(':disabled') ||
  !element.checkVisibility({ visibilityProperty: true });

/**
 * Takes the focus on when what had it has gone or can no longer be pressed, so that it never falls to the page: to what
 * came after it, else to what came before, else to the heading of the page that is shown now.
 */
export function FocusKeeper() {
  useEffect(() => {
    let trail: Trail | undefined;
    const follow = (event: FocusEvent): void => {
      const { target } = event;
      if (target instanceof HTMLElement && target !== document.body) trail = focusTrail(target);
    };
    const check = (): void => {
      const { activeElement } = document;
      const element = trail?.element;
      if (trail === undefined || element === undefined) return;
      if (activeElement !== document.body && activeElement !== null && activeElement !== element) return;
      if (!isGone(element)) return;
      const own = trail.within(OWN);
      if (own?.isConnected === true) return;
      const next = trail.next();
      trail = undefined;
      next?.focus({ preventScroll: next.matches(':is(h1, h2, h3)') });
    };
    const forget = (): void => {
      // Somebody pressed where there is nothing to press: no focus is lost.
      setTimeout(() => {
        if (document.activeElement === document.body && trail !== undefined && !isGone(trail.element)) {
          trail = undefined;
        }
      });
    };
    // A view that knows better where the focus belongs puts it there first.
    let timer: ReturnType<typeof setTimeout> | undefined;
    const observer = new MutationObserver(() => {
      timer ??= setTimeout(() => {
        timer = undefined;
        check();
      });
    });
    observer.observe(document.body, {
      childList: true,
      subtree: true,
      attributes: true,
      attributeFilter: ['disabled', 'hidden', 'open'],
    });
    document.addEventListener('focusin', follow);
    document.addEventListener('focusout', forget);
    return () => {
      observer.disconnect();
      clearTimeout(timer);
      document.removeEventListener('focusin', follow);
      document.removeEventListener('focusout', forget);
    };
  }, []);
  return null;
}
