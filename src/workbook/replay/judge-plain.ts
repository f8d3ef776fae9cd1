import type { Judged } from './judged-block.ts';
import type { LimitColumns } from './limit-columns.ts';

/** The loops here take four points at a time, which halves what a loop costs around its sums. */
export const FOUR = 4;

/** Room to one bound: `sign` times what the value is above it. Gives back 0, or NaN if some room is not finite. */
function roomToOne(
  value: Float64Array,
  bound: Float64Array,
  sign: 1 | -1,
  room: Float64Array,
  at: number,
  count: number,
): number {
  let off = 0;
  for (let i = 0; i < count; i += FOUR) {
    const a = sign * ((value[i] as number) - (bound[i] as number)) + 0;
    const b = sign * ((value[i + 1] as number) - (bound[i + 1] as number)) + 0;
    const c = sign * ((value[i + 2] as number) - (bound[i + 2] as number)) + 0;
    const d = sign * ((value[i + 3] as number) - (bound[i + 3] as number)) + 0;
    room[at + i] = a;
    room[at + i + 1] = b;
    room[at + i + 2] = c;
    room[at + i + 3] = d;
    off += a - a + (b - b) + (c - c) + (d - d);
  }
  return off;
}

/** Room to the nearer of two bounds. Gives back 0, or NaN if some room is not finite. */
function roomToBoth(
  value: Float64Array,
  low: Float64Array,
  high: Float64Array,
  room: Float64Array,
  at: number,
  count: number,
): number {
  let off = 0;
  for (let i = 0; i < count; i++) {
    const number = value[i] as number;
    const distance = Math.min(number - (low[i] as number), (high[i] as number) - number);
    room[at + i] = distance;
    off += distance - distance;
  }
  return off;
}

function rooms({ rule, value, low, high }: Judged, room: Float64Array, at: number, count: number): number {
  if (rule.high === undefined) return roomToOne(value.numbers, low, 1, room, at, count);
  if (rule.low === undefined) return roomToOne(value.numbers, high, -1, room, at, count);
  return roomToBoth(value.numbers, low, high, room, at, count);
}

/** Turns rooms into ratios. */
function ratios(
  room: Float64Array,
  span: Float64Array,
  ratio: Float64Array,
  at: number,
  count: number,
): void {
  for (let i = 0; i < count; i += FOUR) {
    const to = at + i;
    ratio[to] = (room[to] as number) / (span[i] as number);
    ratio[to + 1] = (room[to + 1] as number) / (span[i + 1] as number);
    ratio[to + 2] = (room[to + 2] as number) / (span[i + 2] as number);
    ratio[to + 3] = (room[to + 3] as number) / (span[i + 3] as number);
  }
}

/** Turns rooms into states: inside, near and outside stand for 0, 1 and 2 in a column. */
function states(
  room: Float64Array,
  near: number,
  outside: number,
  state: Uint8Array,
  at: number,
  count: number,
) {
  for (let to = at; to < at + count; to += FOUR) {
    const [a, b] = [room[to] as number, room[to + 1] as number];
    const [c, d] = [room[to + 2] as number, room[to + 3] as number];
    state[to] = Number(a < near) + Number(a < outside);
    state[to + 1] = Number(b < near) + Number(b < outside);
    state[to + 2] = Number(c < near) + Number(c < outside);
    state[to + 3] = Number(d < near) + Number(d < outside);
  }
}

function isAll(flags: Float64Array, flag: number, count: number): boolean {
  for (let i = 0; i < count; i++) if (flags[i] !== flag) return false;
  return true;
}

function isAbove(value: Float64Array, least: number, count: number): boolean {
  for (let i = 0; i < count; i++) if (!((value[i] as number) > least)) return false;
  return true;
}

/**
 * Judges points, `count` of them in fours, as if at each the limit applied and had a value and bounds. Gives back
 * whether that is so at all of them, as in most blocks; the others then have to be judged again.
 */
export function judgePlain(judged: Judged, columns: LimitColumns, at: number, count: number): boolean {
  const { rule, value, flags, appliesWhen, span } = judged;
  const { near, graded, lowIsOutside, mustExist } = rule;
  const { state, room, ratio } = columns;
  const off = rooms(judged, room, at, count);
  // Nothing lies between 0 and the least number.
  const outside = lowIsOutside ? Number.MIN_VALUE : 0;
  states(room, graded ? Math.max(near, outside) : outside, outside, state, at, count);
  if (graded) ratios(room, span, ratio, at, count);
  else {
    room.fill(Number.NaN, at, at + count);
    ratio.fill(Number.NaN, at, at + count);
  }
  if (off !== 0 || (mustExist && !isAbove(value.numbers, 0, count))) return false;
  return flags === undefined || isAll(flags, appliesWhen, count);
}
