/** A result that cannot be computed, with the reason as a whole sentence. */
export class NoAnswer {
  readonly why: string;

  constructor(why: string) {
    this.why = why;
  }
}

/** What every library function gives back: a number in its record's unit, or the reason why there is none. */
export type Answer = number | NoAnswer;
