import { catalogue, tableFunctions } from '../calc/catalogue.ts';
import { cellNamed, limitNamed } from './book.ts';
import type { Plan } from './plan.ts';
import { STANDARD_WORDS } from './standard-words.ts';
import { tableNamed } from './tables.ts';

/** Words that formulas already use for something else. */
const TAKEN: ReadonlySet<string> = new Set(
  [
    ...STANDARD_WORDS,
    ...catalogue.map((it) => it.id),
    ...tableFunctions.map((it) => it.id),
    'E',
    'R',
    'C',
  ].map((word) => word.toLowerCase()),
);

const PATTERN = /^[a-z][a-z0-9_]{0,63}$/;

/** The engine would read these as a column and a row. */
const LIKE_A_PLACE = /^(?:[a-z]{1,3}\d+|r\d*c\d*)$/;

const ROOM = '_room';

const isRoom = (name: string): boolean =>
  name.endsWith(ROOM) && limitNamed(name.slice(0, -ROOM.length)) !== undefined;

/** Why nothing of the owner's can have this name, whatever else there is; undefined when it can. */
export function wordRefusal(name: string): string | undefined {
  if (!PATTERN.test(name)) {
    return `“${name}” cannot be a name here: use small letters, digits and _, a letter first, 64 at most.`;
  }
  if (LIKE_A_PLACE.test(name)) return `“${name}” cannot be a name here: it reads like a column and a row.`;
  return TAKEN.has(name) ? `“${name}” cannot be a name here: formulas already use that word.` : undefined;
}

/** Why an own cell or a table of a plan cannot have this name; undefined when it can. */
export function ownNameRefusal(plan: Plan, name: string): string | undefined {
  const why = wordRefusal(name);
  if (why !== undefined) return why;
  const taken =
    cellNamed(name) !== undefined ||
    tableNamed(name) !== undefined ||
    isRoom(name) ||
    plan.ownCells.some((cell) => cell.name === name) ||
    plan.tables.some((table) => table.name === name);
  return taken ? `There is a cell or table named ${name} already.` : undefined;
}
