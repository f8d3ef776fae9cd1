/** What a cell's list offers. */
export interface Listed {
  /** What it is called, read aloud. */
  readonly label: string;
  readonly words: readonly string[];
  /** The word in use; undefined when none is. */
  readonly present: string | undefined;
}

interface Ways {
  readonly onPick: (word: string) => void;
  /** The list is gone; `byKey`: after Enter or Escape, so that the table goes on where it was. */
  readonly onClose: (how: { readonly byKey: boolean; readonly picked: boolean }) => void;
}

/**
 * Opens a list over a cell of the table. Arrow keys move in it, Enter or a press picks, Escape leaves all as it was;
 * where a browser opens the list in a way of its own, its change is the pick.
 */
export function openList(frame: HTMLElement, cell: HTMLElement, listed: Listed, ways: Ways): void {
  const select = frame.ownerDocument.createElement('select');
  select.className = 'grid-list type-value';
  select.size = Math.max(2, listed.words.length);
  select.setAttribute('aria-label', listed.label);
  for (const word of listed.words) select.add(new Option(word, word, false, word === listed.present));
  const [outer, inner] = [frame.getBoundingClientRect(), cell.getBoundingClientRect()];
  select.style.insetInlineStart = `${inner.left - outer.left}px`;
  select.style.minInlineSize = `${inner.width}px`;
  frame.append(select);
  const room = outer.height - select.offsetHeight;
  select.style.insetBlockStart = `${Math.max(0, Math.min(inner.top - outer.top, room))}px`;

  let isOpen = true;
  let byKey = false;
  const close = (picked: boolean, key: boolean): void => {
    if (!isOpen) return;
    isOpen = false;
    const { value } = select;
    select.remove();
    if (picked && value !== '' && value !== listed.present) ways.onPick(value);
    ways.onClose({ byKey: key, picked });
  };
  select.addEventListener('keydown', (event) => {
    event.stopPropagation();
    byKey = true;
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    event.preventDefault();
    close(event.key === 'Enter', true);
  });
  for (const kind of ['mousedown', 'touchstart']) {
    select.addEventListener(kind, (event) => {
      event.stopPropagation();
      byKey = false;
    });
  }
  select.addEventListener('change', () => {
    if (!byKey) close(true, true);
  });
  select.addEventListener('click', (event) => {
    event.stopPropagation();
    // A press on what is in use already changes nothing, and closes the list as well.
    if (event.target instanceof HTMLOptionElement) close(true, true);
  });
  select.addEventListener('blur', () => close(true, false));
  select.focus({ preventScroll: true });
}
