/** A function that formulas share with every workbook after the same standard. */
export interface StandardFunction {
  readonly id: string;
  /** How it is called; what stands in square brackets may be left out. */
  readonly call: string;
  readonly gives: string;
  /** A worked example, and what it gives. */
  readonly example: string;
  readonly answer: number | boolean;
}

/** Where all of them are defined. */
export const STANDARD_SOURCE = 'OpenFormula (OASIS OpenDocument 1.3, part 4)';

/** In the order of the list of words that formulas may use; the words here are our own. */
export const STANDARD_FUNCTIONS: readonly StandardFunction[] = [
  {
    id: 'IF',
    call: 'IF(condition; then; else)',
    gives: 'One of two values: the first when the condition holds.',
    example: '=IF(2 > 1; 10; 20)',
    answer: 10,
  },
  {
    id: 'IFERROR',
    call: 'IFERROR(value; instead)',
    gives: 'The value, or another one where it has no answer.',
    example: '=IFERROR(1 / 0; 7)',
    answer: 7,
  },
  {
    id: 'AND',
    call: 'AND(condition; …)',
    gives: 'Yes when every condition holds.',
    example: '=AND(2 > 1; 3 > 4)',
    answer: false,
  },
  {
    id: 'OR',
    call: 'OR(condition; …)',
    gives: 'Yes when at least one condition holds.',
    example: '=OR(2 > 1; 3 > 4)',
    answer: true,
  },
  {
    id: 'NOT',
    call: 'NOT(condition)',
    gives: 'Yes when the condition does not hold.',
    example: '=NOT(3 > 4)',
    answer: true,
  },
  {
    id: 'MIN',
    call: 'MIN(number; …)',
    gives: 'The smallest of the numbers.',
    example: '=MIN(4; 2; 9)',
    answer: 2,
  },
  {
    id: 'MAX',
    call: 'MAX(number; …)',
    gives: 'The largest of the numbers.',
    example: '=MAX(4; 2; 9)',
    answer: 9,
  },
  { id: 'SUM', call: 'SUM(number; …)', gives: 'The numbers added up.', example: '=SUM(4; 2; 9)', answer: 15 },
  {
    id: 'AVERAGE',
    call: 'AVERAGE(number; …)',
    gives: 'The numbers added up, over how many they are.',
    example: '=AVERAGE(4; 2; 9)',
    answer: 5,
  },
  {
    id: 'COUNT',
    call: 'COUNT(value; …)',
    gives: 'How many of the values are numbers.',
    example: '=COUNT(4; 2; 9)',
    answer: 3,
  },
  { id: 'ABS', call: 'ABS(number)', gives: 'The number without its sign.', example: '=ABS(-3)', answer: 3 },
  {
    id: 'SIGN',
    call: 'SIGN(number)',
    gives: '−1, 0 or 1, by the sign of the number.',
    example: '=SIGN(-3)',
    answer: -1,
  },
  {
    id: 'INT',
    call: 'INT(number)',
    gives: 'The number without its decimals, so towards 0.',
    example: '=INT(-1.5)',
    answer: -1,
  },
  {
    id: 'MOD',
    call: 'MOD(number; divisor)',
    gives: 'What a division leaves over, with the sign of the divisor.',
    example: '=MOD(-5; 3)',
    answer: 1,
  },
  {
    id: 'ROUND',
    call: 'ROUND(number; [places])',
    gives: 'The nearest number with so many decimal places.',
    example: '=ROUND(2.46; 1)',
    answer: 2.5,
  },
  {
    id: 'ROUNDUP',
    call: 'ROUNDUP(number; [places])',
    gives: 'The same, always away from 0.',
    example: '=ROUNDUP(-2.1)',
    answer: -3,
  },
  {
    id: 'ROUNDDOWN',
    call: 'ROUNDDOWN(number; [places])',
    gives: 'The same, always towards 0.',
    example: '=ROUNDDOWN(-2.9)',
    answer: -2,
  },
  {
    id: 'SQRT',
    call: 'SQRT(number)',
    gives: 'The square root of a number that is not negative.',
    example: '=SQRT(81)',
    answer: 9,
  },
  { id: 'EXP', call: 'EXP(number)', gives: 'e raised to the number.', example: '=EXP(0)', answer: 1 },
  {
    id: 'LN',
    call: 'LN(number)',
    gives: 'The natural logarithm of a number above 0.',
    example: '=LN(EXP(3))',
    answer: 3,
  },
  {
    id: 'LOG10',
    call: 'LOG10(number)',
    gives: 'The logarithm to base 10 of a number above 0.',
    example: '=LOG10(1000)',
    answer: 3,
  },
  {
    id: 'POWER',
    call: 'POWER(base; exponent)',
    gives: 'The base raised to the exponent, as base ^ exponent.',
    example: '=POWER(2; 5)',
    answer: 32,
  },
  {
    id: 'PI',
    call: 'PI()',
    gives: 'The circumference of a circle over its diameter.',
    example: '=PI()',
    answer: Math.PI,
  },
  {
    id: 'SIN',
    call: 'SIN(angle)',
    gives: 'The sine of an angle in radians.',
    example: '=SIN(RADIANS(30))',
    answer: 0.5,
  },
  {
    id: 'COS',
    call: 'COS(angle)',
    gives: 'The cosine of an angle in radians.',
    example: '=COS(RADIANS(60))',
    answer: 0.5,
  },
  {
    id: 'TAN',
    call: 'TAN(angle)',
    gives: 'The tangent of an angle in radians.',
    example: '=TAN(RADIANS(45))',
    answer: 1,
  },
  {
    id: 'ASIN',
    call: 'ASIN(number)',
    gives: 'The angle in radians with this sine, −π/2 to π/2.',
    example: '=DEGREES(ASIN(0.5))',
    answer: 30,
  },
  {
    id: 'ACOS',
    call: 'ACOS(number)',
    gives: 'The angle in radians with this cosine, 0 to π.',
    example: '=DEGREES(ACOS(0.5))',
    answer: 60,
  },
  {
    id: 'ATAN',
    call: 'ATAN(number)',
    gives: 'The angle in radians with this tangent, −π/2 to π/2.',
    example: '=DEGREES(ATAN(1))',
    answer: 45,
  },
  {
    id: 'ATAN2',
    call: 'ATAN2(x; y)',
    gives: 'The angle in radians of the point (x, y) from the x axis.',
    example: '=DEGREES(ATAN2(0; 1))',
    answer: 90,
  },
  {
    id: 'DEGREES',
    call: 'DEGREES(angle)',
    gives: 'An angle in radians as degrees.',
    example: '=DEGREES(PI())',
    answer: 180,
  },
  {
    id: 'RADIANS',
    call: 'RADIANS(angle)',
    gives: 'An angle in degrees as radians: angles of cells are in degrees.',
    example: '=RADIANS(180)',
    answer: Math.PI,
  },
  { id: 'TRUE', call: 'TRUE()', gives: 'Yes.', example: '=TRUE()', answer: true },
  { id: 'FALSE', call: 'FALSE()', gives: 'No.', example: '=FALSE()', answer: false },
];
