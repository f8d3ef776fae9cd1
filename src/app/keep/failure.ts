/** Codes of the error for a full store, from before it had a name. */
const OLD_QUOTA_CODES: ReadonlySet<number> = new Set([22, 1014]);

const OLD_QUOTA_NAME = 'NS_ERROR_DOM_QUOTA_REACHED';

const isQuota = (error: unknown): boolean => {
  if (typeof error !== 'object' || error === null) return false;
  const { name, code } = error as { readonly name?: unknown; readonly code?: unknown };
  return (
    name === 'QuotaExceededError' ||
    name === OLD_QUOTA_NAME ||
    (typeof code === 'number' && OLD_QUOTA_CODES.has(code))
  );
};

const isName = (error: unknown, name: string): boolean =>
  error instanceof DOMException && error.name === name;

const DOOR = 'It is still in this window; save it as a file now.';

/** Why a plan was not kept, from the error that the browser's store gave. */
export function failureSentence(error: unknown): string {
  if (isQuota(error)) {
    return `This browser has no room left for the plan. ${DOOR} Then take away plans you no longer need.`;
  }
  if (isName(error, 'VersionError')) {
    return `A newer version of this workbook has been at the store, which this one cannot read. ${DOOR}`;
  }
  return `This browser refused to store the plan. ${DOOR}`;
}
