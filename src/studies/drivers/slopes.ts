import { look, presentTable } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import { type Slope, slopeOf } from './slope.ts';
import type { Sides } from './stencil.ts';
import type { Varied } from './varied.ts';

/** Reaches looked over, the widest first: a step as a part of an input's size, and steps to each side. */
const REACHES = [
  { part: 1e-3, steps: 4 },
  { part: 1e-3 / 16, steps: 2 },
  { part: 1e-3 / 256, steps: 2 },
] as const;
/** An input's size is a tenth of its value, or ten times what it may be off. */
const sizeOf = ({ value, offBy, step = 1 }: Varied): number =>
  Math.max(Math.abs(value) / 10, 10 * offBy) || step;

/** Offsets from the present value, in the order in which they are looked at. */
function offsets(input: Varied): readonly number[] {
  if (input.whole) return [-1, 1];
  return REACHES.flatMap(({ part, steps }) =>
    Array.from({ length: steps }, (_, i) => (i + 1) * part * sizeOf(input)).flatMap((it) => [it, -it]),
  );
}

const FLAT: Slope = { left: 0, right: 0, kink: false, within: 0 };

const stepped = (here: number, below: number, above: number): Slope => {
  const [left, right] = [here - below, above - here];
  return {
    left: Number.isFinite(left) ? left : null,
    right: Number.isFinite(right) ? right : null,
    kink: Number.isFinite(left) && Number.isFinite(right) && left !== right,
    within: 0,
  };
};

const sides = (here: number, values: readonly number[]): Sides => ({
  here,
  above: values.filter((_, i) => i % 2 === 0),
  below: values.filter((_, i) => i % 2 === 1),
});

function isAll(numbers: Float64Array, value: number, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (numbers[i] !== value) return false;
  return true;
}

/**
 * Slopes of every limit's room by every input, one from each side: per unit, and for an input that goes by whole
 * steps per step. `slopes[limit][input]`; null where the room has no answer at the present values.
 */
export function* slopes(
  evaluator: PointEvaluator,
  inputs: readonly Varied[],
  meter: Meter,
): Generator<Progress, (Slope | null)[][], void> {
  const moves = inputs.map((it) => (evaluator.idle?.has(it.name) ? [] : offsets(it)));
  const count = 1 + moves.reduce((sum, it) => sum + it.length, 0);
  const columns = presentTable(
    inputs.map((it) => it.value),
    count,
  );
  const starts: number[] = [];
  let at = 1;
  for (const [i, offs] of moves.entries()) {
    starts.push(at);
    for (const off of offs) {
      const column = columns[i];
      if (column !== undefined) column[at] = (inputs[i]?.value ?? 0) + off;
      at++;
    }
  }
  meter.expect(count);
  const { room } = yield* look(evaluator, columns, count, meter);
  return room.map((of) => {
    const here = of[0] ?? Number.NaN;
    return inputs.map((input, i): Slope | null => {
      if (Number.isNaN(here)) return null;
      const start = starts[i] ?? 0;
      const end = start + (moves[i]?.length ?? 0);
      // Most inputs do not reach most limits.
      if (isAll(of, here, start, end)) return FLAT;
      const values = Array.from(of.subarray(start, end));
      if (input.whole) return stepped(here, values[0] ?? Number.NaN, values[1] ?? Number.NaN);
      let from = 0;
      return slopeOf(
        REACHES.map(({ part, steps }) => {
          const to = from + 2 * steps;
          const reach = { sides: sides(here, values.slice(from, to)), step: part * sizeOf(input) };
          from = to;
          return reach;
        }),
      );
    });
  });
}
