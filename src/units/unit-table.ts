import { divide, type Fraction, fraction, multiply } from './fraction.ts';
import { fractionOfDecimal } from './fraction-of-decimal.ts';

/** What a unit measures. */
export type Dimension =
  | 'length'
  | 'angle'
  | 'speed'
  | 'force'
  | 'moment'
  | 'stress'
  | 'mass'
  | 'density'
  | 'area'
  | 'share';

/** A unit a value may carry: its symbol, other spellings, and its exact size in the first unit of its dimension. */
export type Unit = {
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly size: Fraction;
  readonly spellings: readonly string[];
};

const unit = (
  dimension: Dimension,
  symbol: string,
  size: Fraction | string,
  ...spellings: string[]
): Unit => ({
  symbol,
  dimension,
  size: typeof size === 'string' ? fractionOfDecimal(size) : size,
  spellings,
});

const INCH = fractionOfDecimal('25.4');
const FOOT = fractionOfDecimal('304.8');
const POUND = fractionOfDecimal('0.45359237');
const POUND_FORCE = fractionOfDecimal('4.4482216152605');
const SQUARE_INCH = multiply(INCH, INCH);
const PSI = divide(POUND_FORCE, SQUARE_INCH);
const CUBIC_FOOT_IN_M3 = fractionOfDecimal('0.028316846592');

/**
 * Units a person may type. All sizes are exact by definition: inch, foot, pound, pound-force and mile by NIST SP 811
 * (2008), Appendix B.8; knot, a nautical mile of 1852 m an hour, by the same. Radians are missing because their size
 * in degrees is no ratio.
 */
export const UNITS: readonly Unit[] = [
  unit('length', 'mm', '1', 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
  unit('length', 'cm', '10', 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
  unit('length', 'm', '1000', 'metre', 'metres', 'meter', 'meters'),
  unit('length', 'in', INCH, 'inch', 'inches'),
  unit('length', 'ft', FOOT, 'foot', 'feet'),
  unit('angle', 'deg', '1', '°', 'º', '˚', 'degree', 'degrees'),
  unit('speed', 'm/s', '1'),
  unit('speed', 'kn', fraction(1852n, 3600n), 'kt', 'kts', 'knot', 'knots'),
  unit('speed', 'km/h', fraction(1000n, 3600n)),
  unit('speed', 'mph', '0.44704'),
  unit('force', 'N', '1', 'newton', 'newtons'),
  unit('force', 'kN', '1000'),
  unit('force', 'lbf', POUND_FORCE),
  unit('moment', 'N·m', '1', 'Nm'),
  unit('moment', 'kN·m', '1000', 'kNm'),
  unit('stress', 'MPa', '1', 'N/mm²'),
  unit('stress', 'GPa', '1000', 'kN/mm²'),
  unit('stress', 'kPa', '0.001'),
  unit('stress', 'Pa', '0.000001'),
  unit('stress', 'psi', PSI),
  unit('stress', 'ksi', multiply(PSI, fraction(1000n, 1n))),
  unit('mass', 'kg', '1'),
  unit('mass', 'g', '0.001'),
  unit('mass', 'lb', POUND, 'lbs'),
  unit('density', 'kg/m³', '1'),
  unit('density', 'g/cm³', '1000'),
  unit('density', 'lb/ft³', divide(POUND, CUBIC_FOOT_IN_M3)),
  unit('area', 'mm²', '1'),
  unit('area', 'cm²', '100'),
  unit('area', 'm²', '1000000'),
  unit('area', 'in²', SQUARE_INCH),
  unit('share', '–', '1'),
  unit('share', '%', '0.01'),
];
