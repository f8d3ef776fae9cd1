/** Codes of the error for a full store, from before it had a name. */
const OLD_QUOTA_CODES: ReadonlySet<number> = new Set([22, 1014]);

const QUOTA_NAMES: ReadonlySet<unknown> = new Set(['QuotaExceededError', 'NS_ERROR_DOM_QUOTA_REACHED']);

/** Why the browser's store could not be used, from the error it gave. */
export function failureSentence(error: unknown): string {
  const { name, code } = (error ?? {}) as { readonly name?: unknown; readonly code?: unknown };
  if (QUOTA_NAMES.has(name) || (typeof code === 'number' && OLD_QUOTA_CODES.has(code))) {
    return 'This browser has no room left for the plan.';
  }
  return name === 'VersionError'
    ? 'A newer version of this workbook has changed the store, so this one cannot read it.'
    : 'This browser refused the use of its store.';
}
