/** How far a study has come, in evaluations or in what `stage` counts. `of` may still grow. */
export interface Progress {
  readonly done: number;
  readonly of: number;
  /** A part of the work that is told by itself, with a count of its own. */
  readonly stage?: string;
  /** What the study has found so far, in the form of its answer, when it can already be shown. */
  readonly soFar?: unknown;
}

/**
 * A study that yields after every evaluation, so that whoever runs it can share out the time; it is cancelled by not
 * going on with it.
 */
export type Study<T> = Generator<Progress, T, void>;

/** Runs a part of a study that tells how far it is in a count of its own. */
export function* staged<T>(part: Study<T>, progress: Progress): Study<T> {
  for (;;) {
    const step = part.next();
    if (step.done === true) return step.value;
    yield progress;
  }
}

/** Runs a study to its end without a pause. */
export function finish<T>(study: Generator<unknown, T, void>): T {
  for (;;) {
    const step = study.next();
    if (step.done === true) return step.value;
  }
}
