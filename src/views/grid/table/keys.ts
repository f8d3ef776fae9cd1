/** What the table's keys do beyond moving about. */
export interface Keys {
  readonly undo: () => void;
  readonly redo: () => void;
  /** Enter or F2 on a cell that cannot be typed in. */
  readonly explain: () => void;
  /** Whether the space bar did something here. */
  readonly flip: () => boolean;
  /** Whether Escape dropped a refused text. */
  readonly drop: () => boolean;
  readonly isEditable: () => boolean;
  /** Fills the chosen cells with what the chosen cell holds. */
  readonly fill: () => void;
  /** Fills the chosen cells with what the uppermost of their column holds. */
  readonly fillDown: () => void;
  /** Whether a list was opened over the chosen cell. */
  readonly list: () => boolean;
  /** Goes to the first cell, or to the first of the chosen column: above it the grid's own key would reach a heading. */
  readonly top: (inColumn: boolean) => void;
}

const isPlain = (event: KeyboardEvent): boolean =>
  !event.ctrlKey && !event.metaKey && !event.altKey && !event.shiftKey;

/** Undo and redo go to the plan's own journal, the same for every view. */
function journalKey(event: KeyboardEvent, keys: Keys): boolean {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return false;
  const key = event.key.toLowerCase();
  if (key === 'z') {
    if (event.shiftKey) keys.redo();
    else keys.undo();
    return true;
  }
  if (key === 'y' && !event.shiftKey) {
    keys.redo();
    return true;
  }
  return false;
}

function plainKey(event: KeyboardEvent, keys: Keys): boolean {
  if (!isPlain(event)) return false;
  switch (event.key) {
    case 'Enter':
    case 'F2':
      if (keys.isEditable()) return keys.list();
      keys.explain();
      return true;
    case ' ':
      return keys.flip();
    case 'Escape':
      return keys.drop();
    default:
      return false;
  }
}

function topKey(event: KeyboardEvent, keys: Keys): boolean {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return false;
  if (event.key !== 'Home' && event.key !== 'ArrowUp') return false;
  keys.top(event.key === 'ArrowUp');
  return true;
}

/** The grid's own keys would fill with what it holds itself, which is nothing. */
function fillKey(event: KeyboardEvent, keys: Keys): boolean {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return false;
  if (event.key === 'Enter') keys.fill();
  else if (event.key.toLowerCase() === 'd') keys.fillDown();
  else return false;
  return true;
}

/** Whether a key was used up; the grid's own keys get the rest. Not to be asked while a text is being edited. */
export const onTableKey = (event: KeyboardEvent, keys: Keys): boolean =>
  journalKey(event, keys) || topKey(event, keys) || fillKey(event, keys) || plainKey(event, keys);
