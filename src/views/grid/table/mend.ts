import { COLUMNS, SPOKEN } from '../columns.ts';

/**
 * Makes one cell the grid's only tab stop: the chosen one, else the first that is drawn. Without it the browser would
 * make the scrolling box one.
 */
export function keepOneStop(root: HTMLElement, chosen: HTMLElement | null | undefined): void {
  const stop =
    chosen ?? root.querySelector<HTMLElement>('.ht_master td.grid-cell:not(.grid-page, .grid-section)');
  for (const td of root.querySelectorAll<HTMLElement>('td[tabindex="0"]')) if (td !== stop) td.tabIndex = -1;
  if (stop !== null && stop.tabIndex !== 0) stop.tabIndex = 0;
}

/**
 * Mends what screen readers and keyboards meet in the grid's own elements: the scrolling box is no stop of its own, the
 * whole is a grid and no tree, it says how many rows there are though few are drawn, and its headings are said in full.
 * The copy of the headings that lies unseen under the standing ones is not said at all.
 */
export function mend(root: HTMLElement, label: string, rows: number): void {
  for (const holder of root.querySelectorAll('.wtHolder[tabindex]')) holder.removeAttribute('tabindex');
  const grid = root.matches('[role="treegrid"], [role="grid"]')
    ? root
    : root.querySelector('[role="treegrid"], [role="grid"]');
  grid?.setAttribute('role', 'grid');
  grid?.setAttribute('aria-label', label);
  grid?.setAttribute('aria-rowcount', String(rows + 1));
  grid?.setAttribute('aria-colcount', String(COLUMNS.length));
  for (const head of root.querySelectorAll('thead tr')) {
    [...head.children].forEach((th, at) => {
      const column = COLUMNS[at];
      if (column !== undefined) th.setAttribute('aria-label', SPOKEN[column]);
    });
  }
}
