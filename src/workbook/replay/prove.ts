import { seeded } from '../../calc/uncertainty/seeded.ts';
import type { Value } from '../../plan/plan.ts';
import type { Answer, Engine } from '../engine.ts';
import { judgeRules, type LimitAnswer } from '../judged.ts';
import type { Replay } from './replay.ts';

/** What a study varies an input over: numbers from low to high, whole ones only if told, or a list of values. */
export type VariedRange = { readonly name: string } & (
  | { readonly low: number; readonly high: number; readonly whole?: boolean }
  | { readonly values: readonly (number | boolean | string)[] }
);

export type Proved = { readonly equal: true } | { readonly equal: false; readonly why: string };

/** Numbers may be this far apart, as a share of the larger; what they are shown by is far coarser. */
const WITHIN = 1e-12;

/** A value of the range, `share` of the way along it. */
function drawn(range: VariedRange, share: number): number | boolean | string {
  if ('values' in range) {
    const last = range.values.length - 1;
    return range.values[Math.min(last, Math.floor(share * range.values.length))] ?? 0;
  }
  const { low, high, whole } = range;
  if (whole !== true) return share === 1 ? high : low + share * (high - low);
  const first = Math.ceil(low);
  return Math.min(Math.floor(high), first + Math.floor(share * (Math.floor(high) - first + 1)));
}

/** Both ends of all ranges at once, then points drawn over them. */
function* pointsOver(
  ranges: readonly VariedRange[],
  points: number,
  seed: number,
): Generator<Map<string, Value>> {
  const random = seeded(seed);
  for (let i = 0; i < points; i++) {
    yield new Map(
      ranges.map((range) => [range.name, drawn(range, i === 0 ? 0 : i === 1 ? 1 : random())] as const),
    );
  }
}

const near = (a: number | undefined, b: number | undefined, scale = 0): boolean =>
  Object.is(a, b) ||
  (a !== undefined &&
    b !== undefined &&
    Math.abs(a - b) <= WITHIN * Math.max(Math.abs(a), Math.abs(b), scale));

const sameAnswer = (a: Answer, b: Answer): boolean =>
  a.why === b.why &&
  (typeof a.value === 'number' && typeof b.value === 'number' ? near(a.value, b.value) : a.value === b.value);

const told = ({ value, why }: Answer): string => (why === undefined ? String(value) : `no answer (${why})`);

const at = (point: ReadonlyMap<string, Value>): string =>
  [...point]
    .slice(0, 8)
    .map(([name, value]) => `${name} ${value}`)
    .join(', ');

/** How a limit stands, as far as a difference in it would tell. */
const stands = ({ verdict: { state, room } }: LimitAnswer): string =>
  room === undefined ? state : `${state} by ${room}`;

/** A room is a difference, so it is as good as what it is the difference of. */
function sameLimit(a: LimitAnswer, b: LimitAnswer): boolean {
  const scale = Math.max(Math.abs(a.value ?? 0), Math.abs(a.low ?? 0), Math.abs(a.high ?? 0));
  return a.verdict.state === b.verdict.state && near(a.verdict.room, b.verdict.room, scale);
}

function differenceAt(engine: Engine, replay: Replay, point: ReadonlyMap<string, Value>): string | undefined {
  for (const [name] of replay.program.wanted) {
    const [there, here] = [engine.answer(name), replay.answer(name)];
    if (!sameAnswer(there, here)) {
      return `${name} is ${told(there)} by the engine and ${told(here)} by the replay at ${at(point)}.`;
    }
  }
  const theirs = judgeRules((name) => engine.answer(name), replay.asked.limits).limits;
  const ours = replay.judgement().limits;
  for (const [i, limit] of theirs.entries()) {
    const other = ours[i];
    if (other === undefined || sameLimit(limit, other)) continue;
    return `The limit ${limit.name} is ${stands(limit)} by the engine and ${stands(other)} by the replay at ${at(point)}.`;
  }
  return undefined;
}

/** How many points a proof looks at. */
export const PROOF_POINTS = 64;

/**
 * Whether the replay gives what the engine gives, at points drawn over the ranges of a study, with a yield after each.
 * Every varied input needs a range. The engine must be one that nobody is looking at; it is left with the last point
 * in the inputs.
 */
export function* prove(
  engine: Engine,
  replay: Replay,
  ranges: readonly VariedRange[],
  seed = 1,
): Generator<void, Proved, void> {
  const varied = new Set(ranges.map(({ name }) => name));
  for (const { name } of replay.program.inputs) {
    if (!varied.has(name)) return { equal: false, why: `${name} is varied, but no range was given for it.` };
  }
  for (const point of pointsOver(ranges, PROOF_POINTS, seed)) {
    engine.set(point);
    replay.evaluate(point);
    const why = differenceAt(engine, replay, point);
    if (why !== undefined) return { equal: false, why };
    yield;
  }
  return { equal: true };
}
