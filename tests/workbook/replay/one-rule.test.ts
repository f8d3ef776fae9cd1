import { afterAll, describe, expect, it } from 'vitest';
import { handedOut } from '../../../src/calc/limits/handed-out.ts';
import { type Judged, judge, roomOf } from '../../../src/calc/limits/judge.ts';
import { STATES } from '../../../src/calc/limits/states.ts';
import { limitCells } from '../../../src/plan/book.ts';
import type { Value } from '../../../src/plan/plan.ts';
import type { Bound } from '../../../src/plan/template.ts';
import { roomFormula } from '../../../src/workbook/contents.ts';
import { type Content, Engine } from '../../../src/workbook/engine.ts';
import { judgeRules } from '../../../src/workbook/judged.ts';
import { cellsOf, type LimitRule, limitRules } from '../../../src/workbook/limit-rule.ts';
import type { Column } from '../../../src/workbook/replay/replay.ts';
import { replayOf } from '../../../src/workbook/replay/replay-of.ts';
import { unroundedIn } from './unrounded.ts';

const rules = limitRules();
const flagOf = ({ applies }: LimitRule): string | undefined =>
  typeof applies === 'object' ? applies.not : applies;
const flags = new Set(rules.flatMap((rule) => flagOf(rule) ?? []));
const numbers = [...new Set(rules.flatMap(cellsOf))].filter((name) => !flags.has(name));

/** The next double above a number, or below it. */
function beside(value: number, way: 1 | -1): number {
  if (value === 0) return way * Number.MIN_VALUE;
  const bits = new BigInt64Array(new Float64Array([value]).buffer);
  bits[0] = (bits[0] as bigint) + (value > 0 === way > 0 ? 1n : -1n);
  return new Float64Array(bits.buffer)[0] as number;
}

/** One look at a limit: what its cells hold; a missing one is null. */
type Look = ReadonlyMap<string, Value>;

const nameIn = (bound: Bound | undefined): string | undefined =>
  typeof bound === 'string' ? bound : typeof bound === 'object' ? bound.minus : undefined;

/** Every value that matters to a limit between these bounds: on each, beside it, at the near band's end, far off. */
function valuesFor({ near }: LimitRule, bounds: readonly number[]): number[] {
  const on = bounds.flatMap((at) => [at, at + near, at - near, at + near / 2, at - near / 2]);
  return [
    ...[...on, 0].flatMap((at) => [at, beside(at, 1), beside(at, -1), at + 1e-12, at - 1e-12]),
    ...[-1e9, -1234.5678, 1e9, 1.7e308, -1.7e308],
  ];
}

/** What the cells of a limit's bounds hold, pair by pair; figures of the template's own stay. */
function boundsFor({ low, high }: LimitRule): Look[] {
  const [lowName, highName] = [nameIn(low), nameIn(high)];
  const pairs: readonly (readonly [Value, Value])[] = [
    [0.3, 0.7],
    [50, 250],
    [50, 50],
    [0, 0],
    [-1.7e308, 1.7e308],
    [null, 250],
    [50, null],
  ];
  if (lowName === undefined && highName === undefined) return [new Map()];
  return pairs.map(
    ([a, b]) =>
      new Map([
        ...(lowName === undefined ? [] : [[lowName, a] as const]),
        ...(highName === undefined ? [] : [[highName, b] as const]),
      ]),
  );
}

const numberOf = (bound: Bound | undefined, look: Look): number | undefined => {
  if (bound === undefined || typeof bound === 'number') return bound;
  const value = look.get(typeof bound === 'string' ? bound : bound.minus);
  if (typeof value !== 'number') return Number.NaN;
  return typeof bound === 'string' ? handedOut(value) : 0 - handedOut(value);
};

function looksAt(rule: LimitRule): Look[] {
  const flag = flagOf(rule);
  const applies: Value[] = flag === undefined ? [] : [true, false, null];
  return boundsFor(rule).flatMap((bounds) => {
    const ends = [numberOf(rule.low, bounds), numberOf(rule.high, bounds)];
    const around = ends.filter((it): it is number => it !== undefined && !Number.isNaN(it));
    const holding = typeof rule.applies !== 'object';
    const looks = [...new Set(valuesFor(rule, around))].map((value): Look => {
      const all = new Map<string, Value>([...bounds, [rule.result, value]]);
      return flag === undefined ? all : all.set(flag, holding);
    });
    const without = [null, 50].flatMap((value) =>
      (applies.length === 0 ? [undefined] : applies).map((said): Look => {
        const all = new Map<string, Value>([...bounds, [rule.result, value]]);
        return flag === undefined || said === undefined ? all : all.set(flag, said);
      }),
    );
    return [...looks, ...without];
  });
}

/** What the one rule says of a look. */
function verdictOf(rule: LimitRule, look: Look) {
  const value = look.get(rule.result);
  const flag = flagOf(rule);
  const said = flag === undefined ? true : look.get(flag);
  const { near, graded, mustExist, lowIsOutside } = rule;
  const judged: Judged = {
    ...{ near, graded, mustExist, lowIsOutside },
    value: typeof value === 'number' ? handedOut(value) : undefined,
    low: numberOf(rule.low, look),
    high: numberOf(rule.high, look),
    applies: typeof said !== 'boolean' ? undefined : said === (typeof rule.applies !== 'object'),
  };
  return judge(judged);
}

/** Cells as results are: a number or yes/no that is there, or a reason. */
const held = (name: string): [string, Content][] => [
  [`${name}_held`, flags.has(name) ? true : 0],
  [`${name}_there`, true],
  [name, { formula: `=IF(${name}_there,${name}_held,NO_ANSWER("It is missing."))` }],
];
const names = [...numbers, ...flags];
const contents = new Map<string, Content>([
  ...names.flatMap(held),
  ...limitCells.map((limit): [string, Content] => [`${limit.name}_room`, { formula: roomFormula(limit) }]),
]);

const engine = new Engine(contents, (name) => name);
afterAll(() => engine.destroy());

/** The cells behind those that a limit looks at, and what they hold at a look. */
const variedBy = (rule: LimitRule): string[] =>
  [...new Set(cellsOf(rule))].flatMap((name) => [`${name}_held`, `${name}_there`]);

const pointOf = (rule: LimitRule, look: Look): Map<string, Value> =>
  new Map(
    [...new Set(cellsOf(rule))].flatMap((name) => {
      const value = look.get(name) ?? null;
      return [
        [`${name}_held`, value ?? (flags.has(name) ? true : 0)],
        [`${name}_there`, value !== null],
      ] as const;
    }),
  );

describe('one rule judges a limit', () => {
  it.each(rules.map((rule) => [rule.name, rule] as const))(
    '%s: the board, the cell of its room and the replay agree',
    (name, rule) => {
      const looks = looksAt(rule);
      const varied = variedBy(rule);
      const replayed = replayOf(engine, varied, { results: [], limits: [rule] });
      if (!replayed.ok) throw new Error(replayed.why);
      const { replay } = replayed;
      const points = looks.map((look) => pointOf(rule, look));
      const column = (from: number, to: number): Column[] =>
        varied.map((cell) => points.slice(from, to).map((it) => it.get(cell)) as unknown as Column);
      const whole = replay.evaluateMany(column(0, points.length), points.length);
      const seen = new Set<string>();
      looks.forEach((look, i) => {
        const expected = verdictOf(rule, look);
        seen.add(expected.state);
        engine.set(points[i] as Map<string, Value>);
        const { verdict } = judgeRules((cell) => engine.answer(cell), [rule]).limits[0] as {
          verdict: unknown;
        };
        expect([look, verdict]).toEqual([look, expected]);

        const room = unroundedIn(engine, `${name}_room`);
        const told = typeof room === 'number' ? room : undefined;
        // A yes/no limit has no room to tell, and its cell is not made.
        if (rule.graded) expect([look, told]).toEqual([look, expected.room]);

        // A point of a block of many, and one of three, which take different loops.
        const from = Math.min(i - (i % 3), Math.max(0, points.length - 3));
        const few = replay.evaluateMany(column(from, from + 3), 3);
        for (const [batch, k] of [
          [whole, i],
          [few, i - from],
        ] as const) {
          const columns = batch.limits[0];
          const said = [columns?.state[k], columns?.room[k], columns?.ratio[k]];
          const { state, room: left = Number.NaN, ratio = Number.NaN } = expected;
          expect([look, said]).toEqual([look, [STATES.indexOf(state), left, ratio]]);
        }
      });
      expect(seen).toContain('outside');
      expect(seen).toContain('inside');
      expect(seen).toContain('no answer');
      if (rule.applies !== undefined) expect(seen).toContain('does not apply');
    },
  );

  it('measures room to the nearer bound', () => {
    expect(roomOf(56, 50, 60)).toBe(4);
  });
});
