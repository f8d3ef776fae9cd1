import type { FootSide } from './feet.ts';

export interface StrutPiece {
  readonly side: FootSide;
  readonly name: string;
  readonly cut: number;
  /** Trial tube that stands in for it. */
  readonly trial: number;
}
