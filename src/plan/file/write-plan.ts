import type { Plan } from '../plan.ts';
import { documentOf } from './document-of.ts';
import { layout } from './layout.ts';

/** A plan as the text of its file: the same plan always gives the same text. */
export const writePlan = (plan: Plan): string => layout(documentOf(plan));
