import { describe, expect, it } from 'vitest';
import { boltForce, tighteningTorque } from '../../../src/calc/fasteners/torque.ts';

describe('torque from T = K F d', () => {
  it('gives the worked example: 3/4-16 UNF, 25 kip, K 0.20, 3750 lbf in', () => {
    // Shigley, Mechanical Engineering Design, 9th ed., Example 8-3 (from memory, the arithmetic by hand).
    const [lbf, inch] = [4.4482216152605, 25.4];
    const newtonMetres = tighteningTorque(0.2, 25000 * lbf, 0.75 * inch);
    expect(newtonMetres / ((lbf * inch) / 1000)).toBeCloseTo(3750, 6);
  });

  it('gives 17.13 N·m for M8 of A4-70 drawn to 0.65 of its yield', () => {
    // ISO 3506-1: 450 MPa; ISO 898-1: 36.6 mm²; by hand 0.2 × 10705.5 × 8 / 1000.
    expect(tighteningTorque(0.2, boltForce(0.65 * 450, 8) as number, 8)).toBeCloseTo(17.1288, 9);
  });
});
