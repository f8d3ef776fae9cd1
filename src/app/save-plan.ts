import { writePlan } from '../plan/file/write-plan.ts';
import type { Plan } from '../plan/plan.ts';
import { downloadText } from './keep/download-text.ts';
import { planFileName } from './keep/plan-file-name.ts';

/** Hands a plan to the browser as a file, and gives back the file's name. */
export function savePlan(plan: Plan): string {
  const name = planFileName(plan.title);
  downloadText(name, writePlan(plan));
  return name;
}
