/** What turns one text into another: at a place, so many characters give way to others. */
export interface Splice {
  readonly at: number;
  readonly drop: number;
  readonly put: string;
}

/** The one splice between two texts that leaves their common beginning and end alone. */
export function spliceOf(from: string, to: string): Splice {
  const shorter = Math.min(from.length, to.length);
  let at = 0;
  while (at < shorter && from[at] === to[at]) at++;
  let tail = 0;
  while (tail < shorter - at && from[from.length - 1 - tail] === to[to.length - 1 - tail]) tail++;
  return { at, drop: from.length - tail - at, put: to.slice(at, to.length - tail) };
}

/** What turns the spliced text back into the one before. */
export const inverse = (from: string, { at, drop, put }: Splice): Splice => ({
  at,
  drop: put.length,
  put: from.slice(at, at + drop),
});

export const spliced = (text: string, { at, drop, put }: Splice): string =>
  text.slice(0, at) + put + text.slice(at + drop);
