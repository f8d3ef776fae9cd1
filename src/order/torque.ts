import { formatNumber } from '../units/format-number.ts';
import { type Ask, numbersOf } from './ask.ts';
import { missingSentence } from './missing.ts';

/** Tightening torques of the hull's bolts, N·m, with what the estimates are made of. */
export interface TorqueOrder {
  /** From the gear's manual; undefined while none is entered. */
  readonly manual: number | undefined;
  readonly low: number;
  readonly high: number;
  readonly factorLow: number;
  readonly factorHigh: number;
  /** Pull wanted in a bolt, N. */
  readonly force: number;
  /** Diameter of a bolt, mm. */
  readonly diameter: number;
}

/** The torques, or why they cannot be said. */
export function torqueOrder(ask: Ask): TorqueOrder | string {
  const it = numbersOf(
    ask,
    ...(['gear_torque', 'torque_low', 'torque_high', 'torque_factor_low', 'torque_factor_high'] as const),
    ...(['clamp_force', 'bolt_diameter'] as const),
  );
  if ('missing' in it) return missingSentence('the torque', it.missing);
  const [manual, low, high, factorLow, factorHigh, force, diameter] = it.got;
  return { manual: manual > 0 ? manual : undefined, low, high, factorLow, factorHigh, force, diameter };
}

/** N·m in one pound-force foot (NIST SP 811, 2008, B.8). */
const POUND_FOOT = 1.355818;

/** A torque as a wrench shows it, whatever unit lengths are in: N·m, and lbf·ft behind. */
export const torqueWords = (torque: number): string =>
  `${formatNumber(torque, 'N·m')} (${formatNumber(torque / POUND_FOOT, 'N·m', 0).replace('N·m', 'lbf·ft')})`;
