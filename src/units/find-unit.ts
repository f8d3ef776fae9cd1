import { UNITS, type Unit } from './unit-table.ts';

const EXACT = new Map<string, Unit>();
const ANY_CASE = new Map<string, Set<Unit>>();

for (const unit of UNITS) {
  for (const spelling of [unit.symbol, ...unit.spellings]) {
    EXACT.set(spelling, unit);
    const folded = spelling.toLowerCase();
    ANY_CASE.set(folded, (ANY_CASE.get(folded) ?? new Set()).add(unit));
  }
}

const plainSpelling = (text: string): string =>
  text.replace(/\.$/, '').replace(/[*⋅]/g, '·').replace(/\^?2/g, '²').replace(/\^?3/g, '³');

/**
 * The units a spelling may stand for: none when it is not known, one as a rule, and more when only its capitals
 * could tell them apart and do not (KN is neither kn, the knot, nor kN).
 */
export const findUnits = (spelling: string): readonly Unit[] => {
  const plain = plainSpelling(spelling);
  const exact = EXACT.get(plain);
  return exact === undefined ? [...(ANY_CASE.get(plain.toLowerCase()) ?? [])] : [exact];
};
