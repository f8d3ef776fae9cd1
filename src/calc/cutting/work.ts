/**
 * A bound on work, so that a question too hard ends with an honest answer instead of never. It counts steps, not time: the
 * same question gets the same answer on every machine.
 */
export class Work {
  spent = 0;
  private readonly steps: number;

  constructor(steps: number) {
    this.steps = steps;
  }

  spend(steps: number): void {
    this.spent += steps;
  }

  get isDone(): boolean {
    return this.spent >= this.steps;
  }
}
