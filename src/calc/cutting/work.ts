/** A bound on work, so that a question too hard ends with an honest answer instead of never. */
export class Work {
  private left: number;

  constructor(steps: number) {
    this.left = steps;
  }

  spend(steps: number): void {
    this.left -= steps;
  }

  get isDone(): boolean {
    return this.left <= 0;
  }
}
