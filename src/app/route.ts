import { useSyncExternalStore } from 'react';

/** Places of the page, each with a hash of its own, so that the browser's back works. */
export const PLACES = [
  'survey',
  'boat',
  'gear',
  'mount',
  'checks',
  'loads',
  'parts',
  'fit-up',
  'own-cells',
  'scenarios',
  'workbook',
  'plan',
  'paper',
  'own-boat',
  'reference',
  'not-judged',
  'drawing',
  'board',
  'sweep',
  'studies',
] as const;

export type Place = (typeof PLACES)[number];

const HOME: Place = 'mount';

const partsOf = (hash: string): readonly string[] => hash.replace(/^#\//, '').split('/');

function placeOf(hash: string): Place {
  const [name] = partsOf(hash);
  return PLACES.find((it) => it === name) ?? HOME;
}

const subscribe = (listener: () => void): (() => void) => {
  window.addEventListener('hashchange', listener);
  return () => window.removeEventListener('hashchange', listener);
};

export const usePlace = (): Place => useSyncExternalStore(subscribe, () => placeOf(window.location.hash));

/** The cell that the address asks for, as in #/mount/shim_count. */
export const useAskedCell = (): string | undefined =>
  useSyncExternalStore(subscribe, () => partsOf(window.location.hash)[1]);

export const go = (place: Place): void => {
  window.location.hash = `#/${place}`;
};
