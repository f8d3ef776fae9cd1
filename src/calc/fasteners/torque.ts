import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { boltSize, diameterArgument } from './iso.ts';

/** Pull in a bolt drawn to a stress, N. */
export function boltForce(stress: number, diameter: number): Answer {
  const size = boltSize(diameter);
  return size instanceof NoAnswer ? size : stress * size.stressArea;
}

/** Torque that draws a bolt to a pull, N·m: an estimate, because K stands for friction that nobody measured. */
export const tighteningTorque = (factor: number, force: number, diameter: number): number =>
  (factor * force * diameter) / 1000;

export const boltForceRecord = record({
  id: 'BOLT_FORCE',
  title: 'Pull in a bolt drawn to a stress',
  arguments: [
    { name: 'stress', unit: 'MPa', meaning: "The stress in the bolt's thread", least: 0 },
    diameterArgument,
  ],
  unit: 'N',
  formula: 'stress × stress area',
  source: 'ISO 898-1, nominal stress areas',
  example: {
    given: [292.5, 8],
    answer: 10705.5,
    tolerance: 1e-9,
    source: 'ISO 898-1 by hand: 0.65 × 450 MPa × 36.6 mm²',
  },
  run: boltForce,
});

export const tighteningTorqueRecord = record({
  id: 'TIGHTENING_TORQUE',
  title: 'Tightening torque, an estimate',
  arguments: [
    { name: 'factor', unit: '–', meaning: 'The torque factor K', least: 0 },
    { name: 'force', unit: 'N', meaning: 'The pull wanted in the bolt', least: 0 },
    { name: 'diameter', unit: 'mm', meaning: "The bolt's diameter", above: 0 },
  ],
  unit: 'N·m',
  formula: 'K × pull × diameter',
  source: 'Shigley, Mechanical Engineering Design, 9th ed., section 8-8, T = K F d',
  example: {
    given: [0.2, 16470, 8],
    answer: 26.352,
    tolerance: 1e-9,
    source: 'T = K F d by hand: M8 of class 8.8, F = 0.75 × 600 MPa × 36.6 mm²',
  },
  run: tighteningTorque,
});
