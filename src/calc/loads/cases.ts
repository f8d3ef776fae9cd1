import { cos, sin } from '../angle.ts';
import type { Argument } from '../record.ts';

/** Shares of a reaction, sideways and fore and aft, in one load case. */
export interface LoadCase {
  readonly sideways: number;
  readonly foreAft: number;
}

/** The two cases that hold the brackets: stall, and the auxiliary rudder hard over at its stop angle. */
export const loadCases = (dragRatio: number, swing: number): readonly [LoadCase, LoadCase] => [
  { sideways: 1, foreAft: dragRatio },
  { sideways: cos(swing), foreAft: sin(swing) },
];

/** The worst of a figure over both cases. */
export function worstCase(dragRatio: number, swing: number, figure: (it: LoadCase) => number): number {
  const [stall, hardOver] = loadCases(dragRatio, swing);
  return Math.max(figure(stall), figure(hardOver));
}

export const caseArguments: readonly Argument[] = [
  { name: 'drag_ratio', unit: '–', meaning: 'The fore-and-aft share of the force at stall', least: 0 },
  { name: 'swing', unit: 'deg', meaning: "The auxiliary rudder's stop angle" },
];
