import type { LimitWords } from '../../src/studies/words.ts';

/** A limit's words in a test: its figures as one function gives them. */
export const plainLimit = (
  short: string,
  figure: (value: number) => string,
  over: Partial<LimitWords> = {},
): LimitWords => ({
  short,
  figure,
  figures: (values) => values.map(figure),
  isYesNo: false,
  lowIsOutside: false,
  ...over,
});
