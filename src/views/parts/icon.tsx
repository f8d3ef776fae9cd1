import './icon.css';

export type IconName = 'minus' | 'plus' | 'undo' | 'redo' | 'drag' | 'lock';

const PATHS: Readonly<Record<IconName, string>> = {
  minus: 'M3 8 H13',
  plus: 'M3 8 H13 M8 3 V13',
  undo: 'M6 3.5 L2.5 7 L6 10.5 M2.5 7 H10 V13',
  redo: 'M10 3.5 L13.5 7 L10 10.5 M13.5 7 H6 V13',
  drag: 'M3 5 H13 M3 8 H13 M3 11 H13',
  lock: 'M3.5 7.5 H12.5 V13.5 H3.5 Z M5.5 7.5 V3 H10.5 V7.5',
};

/** A 16 px line picture; decoration beside its word. */
export const Icon = ({ name }: { readonly name: IconName }) => (
  <svg className="icon" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
    <path d={PATHS[name]} />
  </svg>
);
