/** Papers a sheet is printed on. */
export const PAPERS = ['a4', 'letter'] as const;
export type PaperName = (typeof PAPERS)[number];

export interface Paper {
  readonly name: PaperName;
  readonly words: string;
  /** mm, upright. */
  readonly width: number;
  readonly height: number;
}

/** ISO 216 A4; US Letter, 8 1/2 by 11 in (ANSI/ASME Y14.1 size A). */
export const papers: Readonly<Record<PaperName, Paper>> = {
  a4: { name: 'a4', words: 'A4', width: 210, height: 297 },
  letter: { name: 'letter', words: 'Letter', width: 215.9, height: 279.4 },
};

/** Free edge all round, and at the left, where sheets are bound, mm. */
export const MARGIN = 15;
export const BINDING = 20;

/** A rectangle on the page, mm from its top left, y down. */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What may be printed on. */
export const printable = ({ width, height }: Paper): Area => ({
  x: BINDING,
  y: MARGIN,
  width: width - BINDING - MARGIN,
  height: height - 2 * MARGIN,
});
