/** One thing that the long run checks: what was counted, and what is allowed. */
export interface SoakLine {
  readonly name: string;
  readonly says: string;
  readonly ok: boolean;
}

/** A part of the long run, which gives its lines as they come. */
export type SoakPart = () => Iterable<SoakLine> | AsyncIterable<SoakLine>;
