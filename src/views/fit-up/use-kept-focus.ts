import { type RefObject, useEffect, useRef } from 'react';

/** What takes the focus in a row when what had it is gone, the first that is there. */
const HEIRS = ['.fit-up-plate-head', '.fit-up-lock .action-plate', '.base-check', 'input'];

/** Keeps the focus in the row that had it when what was pressed goes away, so that it never falls to the page. */
export function useKeptFocus(list: RefObject<HTMLElement | null>): void {
  const row = useRef<HTMLElement>(undefined);
  useEffect(() => {
    const onFocus = ({ target }: FocusEvent): void => {
      const it = target instanceof HTMLElement ? target : undefined;
      row.current = list.current?.contains(it ?? null)
        ? (it?.closest<HTMLElement>('[data-row]') ?? undefined)
        : undefined;
    };
    // A press beside everything lets go of the focus on purpose.
    const onPress = ({ target }: PointerEvent): void => {
      if (target instanceof Element && target.closest('a, button, input, textarea, label') === null)
        row.current = undefined;
    };
    document.addEventListener('focusin', onFocus);
    document.addEventListener('pointerdown', onPress);
    return () => {
      document.removeEventListener('focusin', onFocus);
      document.removeEventListener('pointerdown', onPress);
    };
  }, [list]);
  // After every change: the browser gives the focus to the page when its holder is taken away.
  useEffect(() => {
    if (document.activeElement !== document.body || row.current?.isConnected !== true) return;
    for (const heir of HEIRS) {
      const it = row.current.querySelector<HTMLElement>(heir);
      if (it !== null) {
        it.focus();
        return;
      }
    }
  });
}
