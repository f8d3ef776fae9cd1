import type { Plan } from '../plan/plan.ts';
import type { Evaluator, LimitSample, Sample } from '../studies/evaluator.ts';
import type { Progress, Study } from '../studies/study.ts';
import { readOverrides } from '../workbook/overrides.ts';
import type { Workbook } from '../workbook/workbook.ts';

/** Longest a study may hold the page at a time, ms. */
const SLICE = 8;

export interface Watch<T> {
  readonly onProgress?: (progress: Progress) => void;
  readonly onDone: (value: T) => void;
  /** The study could not be made, in one sentence. */
  readonly onFailed: (why: string) => void;
}

const NOTHING: Sample = { value: () => null, limits: [] };

/** An evaluator over a workbook of its own, for a plan in its active scenario. */
export function evaluatorFor(workbook: Workbook, plan: Plan): Evaluator {
  return {
    evaluate(overrides) {
      const read = readOverrides(overrides, plan, plan.active);
      if (!read.ok) return { ...NOTHING, refused: read.why };
      workbook.show(plan, plan.active, read.contents);
      const limits = workbook.judgement().limits.map(
        (it): LimitSample => ({
          name: it.name,
          state: it.verdict.state,
          room: it.verdict.room ?? null,
          ratio: it.verdict.ratio ?? null,
          value: it.value ?? null,
          low: it.low ?? null,
          high: it.high ?? null,
        }),
      );
      return {
        limits,
        value(name) {
          const { value } = workbook.answer(name);
          return typeof value === 'boolean' ? Number(value) : typeof value === 'number' ? value : null;
        },
      };
    },
  };
}

/** Runs a study a slice at a time, so that the page stays quick; gives back how to stop it. */
export function runSliced<T>(make: () => Study<T>, watch: Watch<T>): () => void {
  let stopped = false;
  let study: Study<T> | undefined;
  const channel = new MessageChannel();
  const slice = (): void => {
    if (stopped) return;
    const end = performance.now() + SLICE;
    try {
      study ??= make();
      for (;;) {
        const step = study.next();
        if (step.done === true) {
          stop();
          watch.onDone(step.value);
          return;
        }
        if (performance.now() >= end) {
          watch.onProgress?.(step.value);
          break;
        }
      }
    } catch (error) {
      stop();
      watch.onFailed(error instanceof Error ? error.message : String(error));
      return;
    }
    channel.port2.postMessage(undefined);
  };
  const stop = (): void => {
    stopped = true;
    channel.port1.close();
  };
  channel.port1.onmessage = slice;
  channel.port2.postMessage(undefined);
  return stop;
}
