import type { LimitRule } from '../limit-rule.ts';
import type { Looked } from './block-column.ts';

/** What a limit looks at over a block. */
export interface Judged {
  readonly rule: LimitRule;
  readonly value: Looked;
  /** Infinite where no bound binds, NaN where it cannot be computed. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** What room is measured against. */
  readonly span: Float64Array;
  /** The cell that says whether it applies: 1, 0, or NaN when that cannot be told. */
  readonly flags?: Float64Array;
  /** What that cell says where it applies. */
  readonly appliesWhen: 0 | 1;
}
