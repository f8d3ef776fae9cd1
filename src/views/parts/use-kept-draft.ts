import { useCallback, useSyncExternalStore } from 'react';
import { type KeptDrafts, keptDraftsOf } from '../../session/kept-drafts.ts';
import { useSession } from '../use-session.ts';

type Kept = NonNullable<ReturnType<KeptDrafts['get']>>;

/** A text that was refused, kept under a key as long as the session lasts. */
export function useKeptDraft(key: string): {
  readonly draft: Kept | undefined;
  readonly keep: (typed: string, why?: string) => void;
  readonly drop: () => void;
} {
  const drafts = keptDraftsOf(useSession());
  const draft = useSyncExternalStore(
    drafts.subscribe,
    useCallback(() => drafts.get(key), [drafts, key]),
  );
  const keep = useCallback((typed: string, why?: string) => drafts.keep(key, typed, why), [drafts, key]);
  const drop = useCallback(() => drafts.drop(key), [drafts, key]);
  return { draft, keep, drop };
}
