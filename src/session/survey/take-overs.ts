import type { Plan } from '../../plan/plan.ts';
import { rakeWithin } from './rake-within.ts';
/** A reading of the boat that may follow a result of the survey. */
export interface TakeOver {
  /** The input that takes it, and the result it then follows. */
  readonly name: string;
  readonly from: string;
  /** What must have been measured first: so many complete rows of a table, or an input that is a reading. */
  readonly rows?: readonly [table: string, least: number];
  readonly reading?: string;
  /** What it was measured with. */
  readonly with: string;
  /** How far that makes it off, where the plan's own readings say so. */
  readonly within?: (plan: Plan) => number | undefined;
}

const RUDDER: TakeOver['rows'] = ['rudder_readings', 2];

export const TAKE_OVERS: readonly TakeOver[] = [
  {
    name: 'transom_rake',
    from: 'survey_rake',
    rows: ['transom_readings', 2],
    with: 'plumb line',
    within: rakeWithin,
  },
  { name: 'transom_rake', from: 'level_rake', reading: 'rake_reading', with: 'level' },
  {
    name: 'transom_camber_radius',
    from: 'survey_camber_radius',
    rows: ['camber_readings', 1],
    with: 'straightedge',
  },
  { name: 'transom_top', from: 'survey_top', reading: 'top_reading', with: 'tape' },
  { name: 'transom_bottom', from: 'survey_bottom', reading: 'bottom_reading', with: 'tape' },
  { name: 'rudder_overhang', from: 'survey_overhang_head', rows: RUDDER, with: 'plumb line' },
  { name: 'rudder_overhang_foot', from: 'survey_overhang_foot', rows: RUDDER, with: 'plumb line' },
  { name: 'main_rudder_head', from: 'survey_rudder_head', reading: 'rudder_head_reading', with: 'tape' },
  { name: 'main_rudder_foot', from: 'survey_rudder_foot', reading: 'rudder_foot_reading', with: 'tape' },
];
