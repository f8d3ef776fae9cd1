/** One limit over many points: its state by number, its room and room ratio, NaN where it has none. */
export interface LimitColumns {
  readonly state: Uint8Array;
  readonly room: Float64Array;
  readonly ratio: Float64Array;
}
