import type { Lettering } from './lettering.ts';

/**
 * Widths of letters in thousandths of the size, measured in Encode Sans, weight 500, width 85 %, tabular figures.
 * Kerning is left out, which never makes a text wider than its sum here by more than a hair.
 */
const widths: Readonly<Record<string, number>> = {
  ' ': 226,
  '!': 248,
  '"': 374,
  '%': 903,
  '&': 710,
  "'": 203,
  '(': 314,
  ')': 314,
  '*': 449,
  '+': 561,
  ',': 280,
  '-': 385,
  '.': 280,
  '/': 265,
  ':': 228,
  ';': 228,
  '=': 524,
  '?': 432,
  A: 635,
  B: 601,
  C: 528,
  D: 654,
  E: 544,
  F: 495,
  G: 626,
  H: 677,
  I: 245,
  J: 245,
  K: 568,
  L: 503,
  M: 840,
  N: 688,
  O: 672,
  P: 588,
  Q: 672,
  R: 607,
  S: 499,
  T: 477,
  U: 664,
  V: 588,
  W: 962,
  X: 599,
  Y: 498,
  Z: 540,
  a: 485,
  b: 528,
  c: 408,
  d: 528,
  e: 483,
  f: 333,
  g: 528,
  h: 531,
  i: 228,
  j: 228,
  k: 496,
  l: 227,
  m: 801,
  n: 531,
  o: 520,
  p: 528,
  q: 528,
  r: 345,
  s: 417,
  t: 356,
  u: 527,
  v: 498,
  w: 801,
  x: 476,
  y: 498,
  z: 428,
  '−': 561,
  '×': 494,
  '±': 524,
  '°': 449,
  '⁄': 135,
  '·': 228,
  '’': 203,
  '–': 420,
  Ø: 672,
};

/** A figure, and a figure raised or lowered beside a fraction slash. */
const FIGURE = 561;
const FRACTION_FIGURE = 383;
const OTHER = 620;

const isFigure = (letter: string | undefined): boolean =>
  letter !== undefined && letter >= '0' && letter <= '9';

/** Whether the figure at `i` belongs to a fraction: a slash follows or precedes its run of figures. */
function inFraction(text: string, i: number): boolean {
  let end = i;
  while (isFigure(text[end])) end++;
  let start = i;
  while (start >= 0 && isFigure(text[start])) start--;
  return text[end] === '⁄' || text[start] === '⁄';
}

/** Width of a text as set, px. */
export function textWidth(text: string, lettering: Lettering): number {
  let sum = 0;
  for (let i = 0; i < text.length; i++) {
    const letter = text[i] ?? '';
    if (isFigure(letter)) sum += inFraction(text, i) ? FRACTION_FIGURE : FIGURE;
    else sum += widths[letter] ?? OTHER;
  }
  return (sum / 1000) * lettering.size * lettering.factor;
}
