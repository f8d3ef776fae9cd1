import { tableRows } from '../plan/edit/tables.ts';
import type { Plan } from '../plan/plan.ts';

/** A rectangle on the transom that holes and flanges keep clear of. */
export interface KeepOut {
  /** Port edge, starboard edge, lower edge, upper edge, mm. */
  readonly edges: readonly [number, number, number, number];
  /** Behind the face rather than on it. */
  readonly inside: boolean;
  readonly label: string;
}

const keepOutsIn = (plan: Plan, table: string, inside: boolean): KeepOut[] =>
  tableRows(plan, table).flatMap(({ values, note }) => {
    const [port, starboard, lower, upper] = values;
    return typeof port === 'number' &&
      typeof starboard === 'number' &&
      typeof lower === 'number' &&
      typeof upper === 'number'
      ? [{ edges: [port, starboard, lower, upper] as const, inside, label: note?.label ?? '' }]
      : [];
  });

/** What the survey lists on the transom and behind it; a row that is not complete is left out. */
export const keepOutsOf = (plan: Plan): readonly KeepOut[] => [
  ...keepOutsIn(plan, 'keep_outs_outside', false),
  ...keepOutsIn(plan, 'keep_outs_inside', true),
];
