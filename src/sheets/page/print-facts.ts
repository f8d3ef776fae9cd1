/** What the title block says; the same on every sheet of a printout. */
export interface PrintFacts {
  /** What these sheets are, as in `job sheet`. */
  readonly name: string;
  readonly plan: string;
  /** Null: the base values. */
  readonly scenario: string | null;
  /** Year-month-day. Given from outside, so that the same plan gives the same bytes. */
  readonly date: string;
  readonly version: string;
  readonly standIns: number;
  /** Stands across the head of every sheet: why nobody drills by it. */
  readonly stop?: string;
}
