import type { Style } from '../lettering/styles.ts';
import type { Outline } from './outline.ts';

/** Black on white paper, nothing between. */
export type Paint = 'black' | 'white';

/** Widths of lines on paper, mm. */
export const LINE = { outline: 0.5, thin: 0.25, axis: 0.18 } as const;

export interface OutlineMark {
  readonly kind: 'outline';
  readonly outline: Outline;
  /** Width of the line, mm; 0 draws none. */
  readonly line: number;
  /** Lengths drawn and left out by turns, mm. */
  readonly dash?: readonly number[];
  readonly fill?: Paint;
  /** Only what lies inside is drawn. */
  readonly clip?: Outline;
}

export interface TextMark {
  readonly kind: 'text';
  /** Start of the baseline, mm. */
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly style: Pick<Style, 'face' | 'size'>;
  /** Width the text takes, mm; the letters are drawn narrower or wider to fit. */
  readonly width: number;
  readonly paint: Paint;
  readonly clip?: Outline;
}

/** One thing on a printed page: plain data, so that it can be written as PDF, shown as SVG, and checked. */
export type Mark = OutlineMark | TextMark;
