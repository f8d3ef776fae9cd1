import { findUnits } from './find-unit.ts';
import { quoted } from './quoted.ts';
import { Refusal } from './refusal.ts';
import type { Token } from './token.ts';
import type { Unit } from './unit-table.ts';

export const [INCH, FOOT] = ['in', 'ft'].map((spelling) => findUnits(spelling)[0]);

/** The unit a token stands for, ' and " among them; undefined when it is no unit at all. */
export const readUnit = (token: Token | undefined): Unit | Refusal | undefined => {
  if (token?.kind === 'foot mark') return FOOT;
  if (token?.kind === 'inch mark') return INCH;
  if (token?.kind !== 'unit') return undefined;
  const units = findUnits(token.text);
  if (units.length > 1) {
    const symbols = units.map(({ symbol }) => symbol).join(' or ');
    return new Refusal(`${token.text} can be read two ways; write ${symbols}`);
  }
  return units[0] ?? new Refusal(`${quoted(token.text)} is neither a number nor a unit known here`);
};
