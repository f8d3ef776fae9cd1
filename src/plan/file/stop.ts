import { quoted } from '../../units/quoted.ts';
import type { Fault } from './fault-of-issue.ts';

/** Stops the reading of a document at its first fault. */
export class Stop extends Error {
  readonly fault: Fault;

  constructor(where: string, why: string) {
    super(why);
    this.fault = { where, why };
  }
}

/** Stops at the first name that a list has twice. */
export function twice(names: readonly string[], where: string): void {
  const seen = new Set<string>();
  names.forEach((name, i) => {
    if (seen.has(name)) {
      throw new Stop(`${where}, row ${i + 1} (${name})`, `${where} has ${quoted(name)} twice.`);
    }
    seen.add(name);
  });
}
