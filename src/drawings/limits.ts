/** States of a limit. */
export type LimitState = 'inside' | 'near' | 'outside' | 'no answer' | 'does not apply';

/** A limit as a drawing needs it; value and bounds in base units. */
export interface Limit {
  readonly name: string;
  readonly state: LimitState;
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

export const findLimit = (limits: readonly Limit[] | undefined, name: string): Limit | null =>
  limits?.find((limit) => limit.name === name) ?? null;
