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

/** What the worker tells the page. */
export type FromWorker =
  | { readonly kind: 'ready' }
  | { readonly kind: 'report'; readonly id: number; readonly report: Report<unknown> };

/** What both sides talk through; a worker seen from either side fits. */
export interface Line<Sent, Heard> {
  readonly send: (message: Sent) => void;
  readonly hear: (listener: (message: Heard) => void) => void;
}
