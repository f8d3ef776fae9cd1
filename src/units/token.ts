import { findUnits } from './find-unit.ts';

/** One piece of a typed value. `spaced` says that a space stood before it; `text` is the piece as typed. */
export type Token = {
  readonly kind:
    | 'number'
    | 'part'
    | 'slash'
    | 'hyphen'
    | 'minus'
    | 'plus'
    | 'foot mark'
    | 'inch mark'
    | 'unit'
    | 'other';
  readonly text: string;
  readonly spaced: boolean;
};

type Rule = { readonly kind: Token['kind']; readonly shape: RegExp };

/** Fractions that are one character, such as ⅜. */
const ONE_CHARACTER_FRACTION = /[¼½¾⅐-⅞]/y;

const RULES: readonly Rule[] = [
  { kind: 'number', shape: /[\d.,]+(?:[eE][-+−]?\d+)?/y },
  { kind: 'part', shape: ONE_CHARACTER_FRACTION },
  { kind: 'slash', shape: /[/⁄∕]/y },
  { kind: 'hyphen', shape: /-/y },
  { kind: 'minus', shape: /−/y },
  { kind: 'plus', shape: /\+/y },
  { kind: 'inch mark', shape: /["”“″]|['’‘′]{2}/y },
  { kind: 'foot mark', shape: /['’‘′]/y },
  {
    kind: 'unit',
    shape:
      /(?:\p{L}+|[°˚%])(?:[²³]|\^?[23](?![\d\p{L}]))?(?:[·⋅*/]\p{L}+(?:[²³]|\^?[23](?![\d\p{L}]))?)*(?:\.(?!\d))?/uy,
  },
];
const BARE_UNIT = /\p{L}+/uy;

const matchAt = (shape: RegExp, text: string, at: number): string | undefined => {
  shape.lastIndex = at;
  return shape.exec(text)?.[0];
};

const pieceAt = (text: string, at: number): Pick<Token, 'kind' | 'text'> => {
  for (const { kind, shape } of RULES) {
    const found = matchAt(shape, text, at);
    if (found === undefined) continue;
    if (kind !== 'unit' || findUnits(found).length > 0) return { kind, text: found };
    // In 5ft2 the 2 is inches, not a power: letters alone are tried before the whole run is called unknown.
    const letters = matchAt(BARE_UNIT, text, at);
    return { kind, text: letters !== undefined && findUnits(letters).length > 0 ? letters : found };
  }
  return { kind: 'other', text: String.fromCodePoint(text.codePointAt(at) ?? 0) };
};

/** Splits a typed value into pieces, in one pass; characters nobody knows become `other`. */
export const tokensOf = (text: string): readonly Token[] => {
  const tokens: Token[] = [];
  let spaced = false;
  for (let at = 0; at < text.length; ) {
    if (/\p{Zs}/u.test(text.charAt(at))) {
      spaced = true;
      at += 1;
      continue;
    }
    const piece = pieceAt(text, at);
    tokens.push({ ...piece, spaced });
    spaced = false;
    at += piece.text.length;
  }
  return tokens;
};
