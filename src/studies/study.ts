/** How far a study has come, in evaluations. `of` may still grow. */
export interface Progress {
  readonly done: number;
  readonly of: number;
  /** What the study has found so far, in the form of its answer, when it can already be shown. */
  readonly soFar?: unknown;
}

/**
 * A study that yields after every evaluation, so that whoever runs it can share out the time; it is cancelled by not
 * going on with it.
 */
export type Study<T> = Generator<Progress, T, void>;

/** Runs a study to its end without a pause. */
export function finish<T>(study: Study<T>): T {
  for (;;) {
    const step = study.next();
    if (step.done === true) return step.value;
  }
}
