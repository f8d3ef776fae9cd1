/** Fewest and most values that a function takes in its brackets. */
export type Takes = readonly [fewest: number, most: number];

const MANY: Takes = [1, Number.POSITIVE_INFINITY];

/**
 * Functions of OpenFormula (OASIS OpenDocument, part 4) that formulas may use beside the library's own; studies replay
 * each to the last bit. With how many values each takes.
 */
export const STANDARD_TAKES: Readonly<Record<string, Takes>> = {
  IF: [2, 3],
  IFERROR: [2, 2],
  AND: MANY,
  OR: MANY,
  NOT: [1, 1],
  MIN: MANY,
  MAX: MANY,
  SUM: MANY,
  AVERAGE: MANY,
  COUNT: MANY,
  ABS: [1, 1],
  SIGN: [1, 1],
  INT: [1, 1],
  MOD: [2, 2],
  ROUND: [1, 2],
  ROUNDUP: [1, 2],
  ROUNDDOWN: [1, 2],
  SQRT: [1, 1],
  EXP: [1, 1],
  LN: [1, 1],
  LOG10: [1, 1],
  POWER: [2, 2],
  PI: [0, 0],
  SIN: [1, 1],
  COS: [1, 1],
  TAN: [1, 1],
  ASIN: [1, 1],
  ACOS: [1, 1],
  ATAN: [1, 1],
  ATAN2: [2, 2],
  DEGREES: [1, 1],
  RADIANS: [1, 1],
  TRUE: [0, 0],
  FALSE: [0, 0],
};

export const STANDARD_WORDS: readonly string[] = Object.keys(STANDARD_TAKES);
