const FOCUSABLE = 'a[href], button, input, select, textarea, summary, [tabindex]:not([tabindex="-1"])';

/** Where an element stood, one step out at a time. */
interface Step {
  readonly parent: Element;
  readonly after: Element | null;
  readonly at: number;
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

function headingOf(page: Element): HTMLElement | undefined {
  const main = page.matches('main') ? page : page.querySelector('main');
  const heading = main?.querySelector<HTMLElement>('h2') ?? undefined;
  if (heading !== undefined && !heading.hasAttribute('tabindex')) heading.tabIndex = -1;
  return heading;
}

function nextIn({ parent, after, at }: Step): HTMLElement | undefined {
  const all = focusables(parent);
  const from = after?.parentElement === parent ? after : parent.children[at];
  if (from === undefined) return all.at(-1);
  const follows = (it: HTMLElement): boolean =>
    from === it ||
    from.contains(it) ||
    (from.compareDocumentPosition(it) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  return all.find(follows) ?? all.at(-1);
}

/** Remembers where an element stands. */
export function focusTrail(element: HTMLElement): Trail {
  const steps: Step[] = [];
  for (let child: Element = element; child.parentElement !== null; child = child.parentElement) {
    const parent = child.parentElement;
    steps.push({ parent, after: child.nextElementSibling, at: [...parent.children].indexOf(child) });
  }
  return {
    element,
    within: (selector) => steps.find(({ parent }) => parent.matches(selector))?.parent,
    next: () => {
      for (const step of steps) {
        if (!step.parent.isConnected) continue;
        if (isPage(step.parent)) return headingOf(step.parent) ?? nextIn(step);
        const found = nextIn(step);
        if (found !== undefined && found !== element) return found;
      }
      return undefined;
    },
  };
}
