/**
 * How far the free end of a beam gives way, mm: supported at two places `span` apart, loaded by `force` at the end of an
 * overhang. N, mm, MPa and mm⁴. AISC Manual, Table 3-23, beam overhanging one support, concentrated load at its end.
 */
export const overhangDeflection = (
  force: number,
  overhang: number,
  span: number,
  modulus: number,
  secondMoment: number,
): number => (force * overhang ** 2 * (span + overhang)) / (3 * modulus * secondMoment);
