import { limitNamed, resultNamed } from './book.ts';
import type { OwnLimit } from './plan.ts';
import { linesRefusal } from './text-refusal.ts';

const PATTERN = /^[a-z][a-z0-9_]{0,63}$/;

/** Why an own limit cannot be; `isCell` says whether a name is one of the plan's own cells. */
export function limitRefusal(limit: OwnLimit, isCell: (name: string) => boolean): string | undefined {
  const { name, result, low, high, near, note } = limit;
  if (!PATTERN.test(name)) {
    return `“${name}” cannot be a limit's name: use small letters, digits and _, a letter first, 64 at most.`;
  }
  if (limitNamed(name) !== undefined) return `There is a limit named ${name} already.`;
  if (resultNamed(result) === undefined && !isCell(result)) {
    return `The limit ${name} judges ${result}, but there is no result or own cell of that name.`;
  }
  if (low === undefined && high === undefined)
    return `The limit ${name} needs a low bound, a high bound or both.`;
  for (const bound of [low, high]) {
    if (bound !== undefined && !Number.isFinite(bound)) {
      return `A bound of the limit ${name} is ${bound}; it must be a number.`;
    }
  }
  if (low !== undefined && high !== undefined && low > high) {
    return `The limit ${name} has its low bound, ${low}, above its high bound, ${high}.`;
  }
  if (!(near >= 0 && near < Number.POSITIVE_INFINITY)) {
    return `The near band of the limit ${name} is ${near}; it must be a number of at least 0.`;
  }
  return linesRefusal(`The note on the limit ${name}`, note);
}
