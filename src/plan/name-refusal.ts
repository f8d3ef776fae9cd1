import { CAPS } from './caps.ts';
import { lineHolds } from './text-refusal.ts';

/** A name as it is kept: no spaces round it, accents composed, so that names which look alike are alike. */
export const tidyName = (name: string): string => name.trim().normalize('NFC');

/** Why a tidy name cannot be given to `what` (a plan, a scenario); undefined when it can. */
export function nameRefusal(what: string, name: string): string | undefined {
  if (name === '') return `The name of ${what} is empty: write 1 to ${CAPS.name} characters.`;
  if (name.length > CAPS.name) {
    return `The name of ${what} is ${name.length} characters long; at most ${CAPS.name} are allowed.`;
  }
  const holds = lineHolds(name);
  return holds === undefined ? undefined : `The name of ${what} holds ${holds}.`;
}
