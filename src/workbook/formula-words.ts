import { catalogue, tableFunctions } from '../calc/catalogue.ts';

/** Functions of OpenFormula (OASIS OpenDocument, part 4) that owners may use; studies replay each to the last bit. */
const STANDARD = [
  'IF',
  'IFERROR',
  'AND',
  'OR',
  'NOT',
  'MIN',
  'MAX',
  'SUM',
  'AVERAGE',
  'COUNT',
  'ABS',
  'SIGN',
  'INT',
  'MOD',
  'ROUND',
  'ROUNDUP',
  'ROUNDDOWN',
  'SQRT',
  'EXP',
  'LN',
  'LOG10',
  'POWER',
  'PI',
  'SIN',
  'COS',
  'TAN',
  'ASIN',
  'ACOS',
  'ATAN',
  'ATAN2',
  'DEGREES',
  'RADIANS',
  'TRUE',
  'FALSE',
] as const;

/** The closed list: nothing else can be called from a formula. */
export const formulaWords: ReadonlySet<string> = new Set([
  ...STANDARD,
  ...catalogue.map((it) => it.id),
  ...tableFunctions.map((it) => it.id),
]);
