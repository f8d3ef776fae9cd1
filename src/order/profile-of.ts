import { faceProfile } from '../calc/survey/face-profile.ts';
import type { Profile } from '../calc/transom/profile.ts';
import type { Plan } from '../plan/plan.ts';
import { surveyTable } from '../plan/tables.ts';
import { type Ask, numbersOf } from './ask.ts';

/** The measured face as the plan's own results use it; empty while the face is the straight one. */
export function profileOf(ask: Ask, plan: Plan): Profile {
  if (ask('face_followed') !== true) return [];
  const it = numbersOf(ask, 'tape_zero_height', 'survey_line_aft', 'survey_trim', 'list_reading');
  if ('missing' in it) return [];
  const whole = (row: readonly (number | null)[]): row is readonly number[] =>
    row.every((cell) => cell !== null);
  return faceProfile(true, surveyTable(plan, 'transom_readings').rows.filter(whole), ...it.got);
}
