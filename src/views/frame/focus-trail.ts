const FOCUSABLE = 'a[href], button, input, select, textarea, summary, [tabindex]:not([tabindex="-1"])';

/** Where an element stood, one step out at a time. */
interface Step {
  readonly parent: Element;
  readonly before: Element | null;
  readonly after: Element | null;
}

/** What had the focus, and where it stood while it did. */
export interface Trail {
  readonly element: HTMLElement;
  /** The nearest ancestor of a kind that the element had. */
  readonly within: (selector: string) => Element | undefined;
  /** What takes the focus once the element has gone. */
  readonly next: () => HTMLElement | undefined;
}

const canTake = (element: HTMLElement): boolean =>
  !element.matches(':disabled, [inert] *') && element.checkVisibility({ visibilityProperty: true });

const focusables = (root: Element): readonly HTMLElement[] =>
  [...root.querySelectorAll<HTMLElement>(FOCUSABLE)].filter(canTake);

/** Whether a step leads out of the page shown, which another one may have taken the place of. */
const isPage = (element: Element): boolean => element.matches('main, .page, body');

function headingOf(part: Element | null): HTMLElement | undefined {
  const heading = part?.querySelector<HTMLElement>('h2, h3') ?? undefined;
  if (heading !== undefined && !heading.hasAttribute('tabindex')) heading.tabIndex = -1;
  return heading;
}

const comesAfter = (element: Element, it: Element): boolean =>
  (element.compareDocumentPosition(it) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;

/** What stands where the element stood, seen from one step out. */
function nextIn({ parent, before, after }: Step): HTMLElement | undefined {
  const all = focusables(parent);
  const isIn = (it: Element | null): it is Element => it !== null && parent.contains(it);
  if (isIn(after)) return all.find((it) => after === it || comesAfter(after, it)) ?? all.at(-1);
  if (isIn(before)) return all.find((it) => comesAfter(before, it) && !before.contains(it)) ?? all.at(-1);
  // All that was beside it has gone as well: something else is shown here now.
  return headingOf(parent) ?? all[0];
}

/** Remembers where an element stands. */
export function focusTrail(element: HTMLElement): Trail {
  const steps: Step[] = [];
  for (let child: Element = element; child.parentElement !== null; child = child.parentElement) {
    const parent = child.parentElement;
    steps.push({ parent, before: child.previousElementSibling, after: child.nextElementSibling });
  }
  return {
    element,
    within: (selector) => steps.find(({ parent }) => parent.matches(selector))?.parent,
    next: () => {
      for (const step of steps) {
        if (!step.parent.isConnected) continue;
        if (isPage(step.parent)) return headingOf(document.querySelector('main')) ?? nextIn(step);
        const found = nextIn(step);
        if (found !== undefined && found !== element) return found;
      }
      return undefined;
    },
  };
}
