import type { Program } from './program.ts';
import type { Kind } from './rule.ts';
import { ruleNamed } from './rules.ts';
import { isFault, type Scalar } from './scalar.ts';

const kindOfValue = (value: Scalar): Kind => {
  if (isFault(value)) return 'fault';
  if (typeof value === 'number') return 'number';
  if (typeof value === 'boolean') return 'boolean';
  return typeof value === 'string' ? 'text' : 'mixed';
};

/** What either of two may come to. */
const either = (a: Kind, b: Kind): Kind => {
  if (a === b || b === 'fault') return a;
  return a === 'fault' ? b : 'mixed';
};

/** What each slot can hold, errors aside. */
export function kindsOf({ slots, inputs, given, steps }: Program): readonly Kind[] {
  const kinds = new Array<Kind>(slots).fill('mixed');
  for (const { slot, kind } of inputs) kinds[slot] = kind;
  for (const [slot, value] of given) kinds[slot] = kindOfValue(value);
  const kindAt = (slot: number | undefined): Kind => (slot === undefined ? 'boolean' : (kinds[slot] as Kind));
  for (const { op, args, out } of steps) {
    const kind = ruleNamed(op)?.kind ?? 'mixed';
    if (kind !== 'of its arguments') kinds[out] = kind;
    // An IF left without its third part comes to FALSE there.
    else if (op === 'IF') kinds[out] = either(kindAt(args[1]), kindAt(args[2]));
    else if (op === 'IFERROR') kinds[out] = either(kindAt(args[0]), kindAt(args[1]));
    else kinds[out] = kindAt(args[0]);
  }
  return kinds;
}
