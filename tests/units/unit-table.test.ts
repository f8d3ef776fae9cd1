import { describe, expect, it } from 'vitest';
import { findUnits } from '../../src/units/find-unit.ts';
import { fraction, multiply } from '../../src/units/fraction.ts';
import { fractionOfDecimal } from '../../src/units/fraction-of-decimal.ts';
import { numberOfFraction } from '../../src/units/number-of-fraction.ts';
import { UNITS, type Unit } from '../../src/units/unit-table.ts';

const unit = (symbol: string): Unit => {
  const [found, ...more] = findUnits(symbol);
  if (found === undefined || more.length > 0) throw new Error(`${symbol} is not one unit`);
  return found;
};

describe('unit table', () => {
  // NIST SP 811 (2008), Appendix B.8, printed to 7 figures and marked exact where it is; from memory.
  it.each([
    ['in', 25.4, 0],
    ['ft', 304.8, 0],
    ['in²', 645.16, 0],
    ['mph', 0.44704, 0],
    ['kn', 0.5144444, 5e-8],
    ['km/h', 0.2777778, 5e-8],
    ['lbf', 4.448222, 5e-7],
    ['lb', 0.4535924, 5e-8],
    ['psi', 6.894757e-3, 5e-10],
    ['ksi', 6.894757, 5e-7],
    ['lb/ft³', 16.01846, 5e-6],
  ])('%s is %s of the first unit of its dimension', (symbol, size, half) => {
    expect(Math.abs(numberOfFraction(unit(symbol).size) - size)).toBeLessThanOrEqual(half);
  });

  it('holds the exact definitions of shared check value 13', () => {
    // 1 lbf, 1 psi in Pa, 1 lb: NIST SP 811 Appendix B, from memory.
    expect(numberOfFraction(unit('lbf').size)).toBe(4.4482216152605);
    expect(numberOfFraction(unit('psi').size) * 1e6).toBeCloseTo(6894.757293168, 9);
    expect(numberOfFraction(unit('lb').size)).toBe(0.45359237);
    // A pound-force is a pound at standard gravity, 9.80665 m/s² (ISO 80000-3; exact by definition, from memory).
    expect(unit('lbf').size).toEqual(multiply(unit('lb').size, fractionOfDecimal('9.80665')));
    // A knot is 1852 m an hour (NIST SP 811, B.8; from memory).
    expect(multiply(unit('kn').size, fraction(3600n, 1n))).toEqual(fraction(1852n, 1n));
    expect(unit('ft').size).toEqual(multiply(unit('in').size, fraction(12n, 1n)));
  });

  it('gives every spelling one meaning', () => {
    const spellings = UNITS.flatMap(({ symbol, spellings }) => [symbol, ...spellings]);
    expect(new Set(spellings).size).toBe(spellings.length);
    for (const one of UNITS) {
      for (const spelling of [one.symbol, ...one.spellings]) expect(findUnits(spelling)).toEqual([one]);
    }
  });

  it('sizes the first unit of each dimension 1, and all above 0', () => {
    const seen = new Set<string>();
    for (const { dimension, size, symbol } of UNITS) {
      expect(size.over, symbol).toBeGreaterThan(0n);
      if (!seen.has(dimension)) expect(size, symbol).toEqual(fraction(1n, 1n));
      seen.add(dimension);
    }
  });
});

describe('findUnits', () => {
  it.each([
    ['MM', 'mm'],
    ['In', 'in'],
    ['in.', 'in'],
    ['FEET', 'ft'],
    ['KG', 'kg'],
    ['mpa', 'MPa'],
    ['kg/m3', 'kg/m³'],
    ['kg/m^3', 'kg/m³'],
    ['N/mm2', 'MPa'],
    ['N*m', 'N·m'],
    ['N⋅m', 'N·m'],
    ['mm2', 'mm²'],
    ['º', 'deg'],
    ['Knots', 'kn'],
  ])('%s is %s', (spelling, symbol) => {
    expect(findUnits(spelling).map((one) => one.symbol)).toEqual([symbol]);
  });

  it('tells the knot from the kilonewton by capitals alone, and guesses neither', () => {
    expect(findUnits('kn').map((one) => one.dimension)).toEqual(['speed']);
    expect(findUnits('kN').map((one) => one.dimension)).toEqual(['force']);
    expect(findUnits('KN')).toHaveLength(2);
    expect(findUnits('Kn')).toHaveLength(2);
  });

  it('knows nothing of the rest', () => {
    for (const spelling of ['', 'rad', 'furlong', 'ft²', 'constructor', '__proto__']) {
      expect(findUnits(spelling), spelling).toEqual([]);
    }
  });
});
