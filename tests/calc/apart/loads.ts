import type { Apart, Draw } from './apart.ts';
import { solve } from './geometry.ts';
import { aisc } from './struts.ts';

const beam = (it: Draw): number[] => [
  it.between(500, 5000),
  it.between(300, 1100),
  it.between(60, 300),
  it.between(250, 800),
];
const onTube = (it: Draw): number[] => [it.between(500, 5000), it.between(300, 1100), it.between(500, 1500)];

/** Two props of a beam that a force at 0 loads beyond the first: forces and moments about the force’s own place balance. */
const props = (force: number, first: number, second: number): number[] =>
  solve(
    [
      [1, 1],
      [first, second],
    ],
    [-force, 0],
  );

/** Second moment of a ring about a diameter, summed ring by ring and by angle. */
function ring(inner: number, outer: number): number {
  const [steps, angles] = [64, 16];
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const dr = (outer - inner) / steps;
    // Simpson’s rule is exact for r³.
    const [a, m, b] = [inner + i * dr, inner + (i + 0.5) * dr, inner + (i + 1) * dr];
    const r3 = ((a ** 3 + 4 * m ** 3 + b ** 3) / 6) * dr;
    for (let k = 0; k < angles; k++)
      sum += r3 * Math.sin((2 * Math.PI * k) / angles) ** 2 * ((2 * Math.PI) / angles);
  }
  return sum;
}

export const loads: readonly Apart[] = [
  {
    id: 'HELD_FORCE',
    road: 'both clamps on the tube, in order',
    draw: (it) => [
      it.between(500, 5000),
      it.share() < 0.3 ? it.between(-0.9, 0.9) : it.between(-60, 300),
      it.share() < 0.3 ? it.between(-0.9, 0.9) : it.between(-60, 900),
      it.between(500, 1100),
    ],
    answer: (force, arm, spacing, length) => {
      const [lower, upper] = [arm, arm + spacing];
      return lower >= 0 && upper > lower && upper <= length ? force : null;
    },
  },
  {
    id: 'LOWER_REACTION',
    road: 'balance of a beam, solved',
    draw: beam,
    answer: (f, e, a, s) => Math.abs(props(f, e + a, e + a + s)[0] as number),
  },
  {
    id: 'UPPER_REACTION',
    road: 'balance of a beam, solved',
    draw: beam,
    answer: (f, e, a, s) => Math.abs(props(f, e + a, e + a + s)[1] as number),
  },
  {
    id: 'BOTTOM_BEARING_FORCE',
    road: 'balance of a beam, solved',
    draw: onTube,
    answer: (f, e, l) => Math.abs(props(f, e, e + l)[0] as number),
  },
  {
    id: 'TOP_BEARING_FORCE',
    road: 'balance of a beam, solved',
    draw: onTube,
    answer: (f, e, l) => Math.abs(props(f, e, e + l)[1] as number),
  },
  {
    id: 'WATER_FORCE',
    road: 'the kinetic energy of the water that a second brings, in SI units; 1 kn = 1852 m an hour (BIPM)',
    draw: (it) => [
      it.between(990, 1030),
      it.between(4, 15),
      it.between(150, 400),
      it.between(500, 1200),
      it.between(0.3, 1.6),
    ],
    answer: (density, knots, chord, span, coefficient) => {
      const speed = (knots * 1852) / (60 * 60);
      const area = (chord / 1000) * (span / 1000);
      const massEachSecond = density * area * speed;
      return coefficient * 0.5 * massEachSecond * speed;
    },
  },
  {
    id: 'ROUND_BENDING_SHARE',
    road: 'the second moment summed over the section',
    draw: (it) => [it.between(100, 3000), it.between(20, 60), it.between(80, 500)],
    answer: (moment, d, allowed) => (moment * 1000 * (d / 2)) / ring(0, d / 2) / allowed,
  },
  {
    id: 'TUBE_BENDING_SHARE',
    road: 'the second moment summed over the section',
    draw: (it) => [it.between(100, 3000), it.between(30, 90), it.between(2, 8), it.between(80, 500)],
    answer: (moment, od, wall, allowed) => (moment * 1000 * (od / 2)) / ring(od / 2 - wall, od / 2) / allowed,
  },
  {
    id: 'COLUMN_STRENGTH',
    road: 'AISC 360 E3 by the ratio of yield to Euler’s stress',
    draw: (it) => [
      it.between(150, 2500),
      it.between(25, 60),
      it.between(1.5, 5),
      it.between(150, 300),
      it.between(150_000, 210_000),
    ],
    answer: (long, od, wall, fy, e) => aisc(od, wall, fy, e, long),
  },
];
