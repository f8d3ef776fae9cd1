/** What browsers call a module that could not be fetched, or the styles that belong to it. */
const NOT_FETCHED = /dynamically imported module|importing a module|module script|preload/i;

/** Why a part of the page is not there, as the end of a sentence about it. */
export function loadFault(error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  if (NOT_FETCHED.test(message)) return 'could not be loaded.';
  return `could not be shown: ${message.replace(/\.?$/, '.')}`;
}
