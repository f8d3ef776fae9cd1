import { describe, expect, it } from 'vitest';
import { type Keys, onTableKey } from '../../../../src/views/grid/table/keys.ts';

interface Pressed {
  readonly key: string;
  readonly ctrlKey?: boolean;
  readonly metaKey?: boolean;
  readonly shiftKey?: boolean;
  readonly altKey?: boolean;
}

/** What a key does, and whether it was used up. */
function press(
  pressed: Pressed,
  isEditable = true,
  used = true,
  hasList = false,
): { done: string[]; used: boolean } {
  const done: string[] = [];
  const keys: Keys = {
    undo: () => done.push('undo'),
    redo: () => done.push('redo'),
    explain: () => done.push('explain'),
    flip: () => {
      done.push('flip');
      return used;
    },
    drop: () => {
      done.push('drop');
      return used;
    },
    top: (inColumn) => done.push(inColumn ? 'top of column' : 'top'),
    isEditable: () => isEditable,
    fill: () => done.push('fill'),
    fillDown: () => done.push('fill down'),
    list: () => {
      if (hasList) done.push('list');
      return hasList;
    },
  };
  const none = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };
  return { used: onTableKey({ ...none, ...pressed } as KeyboardEvent, keys), done };
}

describe('keys of the table', () => {
  it('undo and redo in the plan’s own journal', () => {
    expect(press({ key: 'z', ctrlKey: true })).toEqual({ done: ['undo'], used: true });
    expect(press({ key: 'z', metaKey: true })).toEqual({ done: ['undo'], used: true });
    expect(press({ key: 'Z', ctrlKey: true, shiftKey: true })).toEqual({ done: ['redo'], used: true });
    expect(press({ key: 'y', ctrlKey: true })).toEqual({ done: ['redo'], used: true });
    expect(press({ key: 'z', ctrlKey: true, altKey: true }).used).toBe(false);
    expect(press({ key: 'z' }).used).toBe(false);
  });

  it('lead from what is worked out to what stands behind it, and leave what can be typed to the editor', () => {
    for (const key of ['Enter', 'F2']) {
      expect(press({ key }, false)).toEqual({ done: ['explain'], used: true });
      expect(press({ key }, true)).toEqual({ done: [], used: false });
      expect(press({ key, shiftKey: true }, false).used).toBe(false);
    }
  });

  it('use the space bar and Escape only where they did something', () => {
    expect(press({ key: ' ' }, true, true).used).toBe(true);
    expect(press({ key: ' ' }, true, false).used).toBe(false);
    expect(press({ key: 'Escape' }, true, true)).toEqual({ done: ['drop'], used: true });
    expect(press({ key: 'Escape' }, true, false).used).toBe(false);
  });

  it('open the list of what is chosen from one', () => {
    expect(press({ key: 'Enter' }, true, true, true)).toEqual({ done: ['list'], used: true });
    expect(press({ key: 'F2' }, true, true, true)).toEqual({ done: ['list'], used: true });
    expect(press({ key: '4' }, true, true, true).used).toBe(false);
  });

  it('fill, and leave none of that to the grid, which would empty the cells', () => {
    expect(press({ key: 'Enter', ctrlKey: true })).toEqual({ done: ['fill'], used: true });
    expect(press({ key: 'Enter', metaKey: true })).toEqual({ done: ['fill'], used: true });
    expect(press({ key: 'd', ctrlKey: true })).toEqual({ done: ['fill down'], used: true });
    expect(press({ key: 'D', metaKey: true })).toEqual({ done: ['fill down'], used: true });
    expect(press({ key: 'd' }).used).toBe(false);
  });

  it('go to the top', () => {
    expect(press({ key: 'Home', ctrlKey: true }).done).toEqual(['top']);
    expect(press({ key: 'ArrowUp', ctrlKey: true }).done).toEqual(['top of column']);
    expect(press({ key: 'Home', ctrlKey: true, shiftKey: true }).used).toBe(false);
    expect(press({ key: 'ArrowDown', ctrlKey: true }).used).toBe(false);
  });
});
