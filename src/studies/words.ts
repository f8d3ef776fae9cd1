/** What a number that may be varied is called in a sentence. */
export interface CellWords {
  /** Its short name, as inside a sentence. */
  readonly short: string;
  /** What a count counts, one and many. */
  readonly noun?: readonly [one: string, many: string] | undefined;
  /** A value with its unit: `888 mm`; a count alone: `4`. */
  figure(value: number): string;
  /** A value without its unit. */
  bare(value: number): string;
  /** What stands there once it has this value, where that is a thing with a name: `M12 bolts`. */
  readonly thing?: ((value: number) => string) | undefined;
}

/** What a limit is called inside a sentence, and its figures. */
export interface LimitWords {
  readonly short: string;
  figure(value: number): string;
  /** Values beside one another, with as many decimals as tell them apart; shares in per cent. */
  figures(values: readonly number[]): readonly string[];
  /** It is met or not, and has no figure. */
  readonly isYesNo: boolean;
  /** Its low bound is itself outside. */
  readonly lowIsOutside: boolean;
}

/** The owner's words for names, given to a study's sentences from outside. */
export interface Words {
  cell(name: string): CellWords;
  limit(name: string): LimitWords;
}

const NUMBERS = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** A count as a word up to twelve. */
export const numberWord = (count: number): string => NUMBERS[count] ?? String(count);

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `a`, `a and b`, `a, b and c`. */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

/** A value in a sentence, a count with what it counts: `888 mm`, `4 shims`, `1 shim`. */
export function told({ noun, figure }: CellWords, value: number): string {
  return noun === undefined ? figure(value) : `${figure(value)} ${value === 1 ? noun[0] : noun[1]}`;
}
