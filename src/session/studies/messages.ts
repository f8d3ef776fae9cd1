import type { Plan } from '../../plan/plan.ts';
import type { Report } from '../study-desk.ts';
import type { StudyCall } from './registry.ts';

/** Plans that the worker keeps; both sides forget the oldest in the same order. */
export const PLANS_KEPT = 4;

/** What the page tells the worker. */
export type ToWorker =
  | { readonly kind: 'plan'; readonly plan: number; readonly content: Plan }
  | { readonly kind: 'ask'; readonly id: number; readonly plan: number; readonly call: StudyCall }
  | { readonly kind: 'drop'; readonly id: number };

/** What the worker tells the page: that it holds a lock for as long as it lives, that it can be asked, answers. */
export type FromWorker =
  | { readonly kind: 'holding'; readonly lock: string }
  | { readonly kind: 'ready' }
  | { readonly kind: 'report'; readonly id: number; readonly report: Report<unknown> };

/** What both sides talk through; a worker seen from either side fits. */
export interface Line<Sent, Heard> {
  readonly send: (message: Sent) => void;
  readonly hear: (listener: (message: Heard) => void) => void;
}

/** The page's end of a line to a worker that may die. */
export interface WorkerLine extends Line<ToWorker, FromWorker> {
  /** Hears when the worker is there no more, or has thrown. */
  readonly lost: (listener: () => void) => void;
  readonly close: () => void;
}
