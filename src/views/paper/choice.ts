import type { Units } from '../../plan/plan.ts';

export type Ending = 'pdf' | 'dxf' | 'svg';

/** A kind of sheet that can be printed. */
export interface SheetChoice {
  readonly name: string;
  readonly title: string;
  /** What it is for, in one sentence. */
  readonly says: string;
  /** The files it can be saved as. */
  readonly endings: readonly Ending[];
}

/** What is to be printed. */
export interface Asked {
  readonly sheet: string;
  readonly paper: 'a4' | 'letter';
  readonly units: Units;
}
