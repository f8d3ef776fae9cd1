import type { KeepOut } from '../../order/keep-outs-of.ts';

const LETTERS = 26;

/** Letter of a thing to keep clear of: holes have the numbers. After z, aa. */
export const keyLetter = (i: number): string =>
  (i < LETTERS ? '' : keyLetter(Math.floor(i / LETTERS) - 1)) +
  String.fromCharCode('a'.charCodeAt(0) + (i % LETTERS));

const middle = ({ edges: [a, b] }: KeepOut): number => a + b;

/** From port to starboard, as the letters run. */
export const lettered = (keepOuts: readonly KeepOut[]): readonly KeepOut[] =>
  [...keepOuts].sort((a, b) => middle(a) - middle(b));

/** What each letter on the drawing from astern stands for; empty when nothing is in the way. */
export const keepOutKey = (keepOuts: readonly KeepOut[]): string =>
  keepOuts.length === 0
    ? ''
    : `Keep clear of ${keepOuts
        .map(({ label, inside }, i) => {
          const name = label === '' ? 'not named' : label;
          return `${keyLetter(i)}: ${inside ? `${name}, inside` : name}`;
        })
        .join(' · ')}.`;
