/** One thing that the long run checks: what was counted, and what is allowed. */
export interface SoakLine {
  readonly name: string;
  readonly says: string;
  readonly ok: boolean;
}

/** A part of the long run, which gives its lines as they come; `only` narrows it to what holds that word. */
export type SoakPart = (only: string) => Iterable<SoakLine> | AsyncIterable<SoakLine>;
