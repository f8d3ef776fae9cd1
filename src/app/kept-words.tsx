import { useSyncExternalStore } from 'react';
import type { Kept } from './kept.ts';

const clock = (when: number): string =>
  new Date(when).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });

/** Kept, keeping or not kept, with where and when or why. */
export function KeptWords({ kept }: { readonly kept: Kept }) {
  const state = useSyncExternalStore(kept.state.subscribe, () => kept.state.value);
  if (state === undefined) return 'opening';
  if (state.state === 'keeping') return 'keeping';
  if (state.state === 'kept') return `in this browser, ${clock(state.when)}`;
  return <strong>not kept</strong>;
}
