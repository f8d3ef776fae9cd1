/** Properties of a round tube's section. */
export interface TubeSection {
  /** mm² */
  readonly area: number;
  /** Second moment of area, mm⁴ */
  readonly secondMoment: number;
  /** Section modulus, mm³ */
  readonly modulus: number;
  /** Radius of gyration, mm */
  readonly radius: number;
}

/** Section of a tube of outside diameter `od` and wall `wall`, mm, from the closed formulas for a ring. */
export function tubeSection(od: number, wall: number): TubeSection {
  const bore = od - 2 * wall;
  const area = (Math.PI / 4) * (od * od - bore * bore);
  const secondMoment = (area / 16) * (od * od + bore * bore);
  return { area, secondMoment, modulus: (2 * secondMoment) / od, radius: Math.sqrt(secondMoment / area) };
}

/** Section modulus of a solid round bar, mm³. */
export const roundModulus = (diameter: number): number => (Math.PI * diameter * diameter * diameter) / 32;
