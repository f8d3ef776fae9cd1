/** Why a text cannot be read: the clause that follows "2 3/0 is not a length:". */
export class Refusal {
  readonly cause: string;

  constructor(cause: string) {
    this.cause = cause;
  }
}
