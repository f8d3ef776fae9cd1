import { handedOut } from '../../calc/limits/handed-out.ts';
import type { Value } from '../../plan/plan.ts';
import type { Answer } from '../engine.ts';
import { EMPTY_SENTENCE, errorSentence } from '../error-sentence.ts';
import { type Judgement, judgeRules } from '../judged.ts';
import { judgedNumber, type LimitRule } from '../limit-rule.ts';
import type { Looked } from './block-column.ts';
import { exportColumn, halvesOf } from './exported.ts';
import { type JudgeBlock, judgeBlock, judgeRuledOut } from './judge-lanes.ts';
import { fillUp } from './kernels/kernel.ts';
import { type Lane, read } from './lanes.ts';
import type { LimitColumns } from './limit-columns.ts';
import { type Linked, link } from './link.ts';
import type { Input, Program } from './program.ts';
import { isRuledOut } from './ruled-out.ts';
import { isFault, isTable, type Scalar } from './scalar.ts';

/** An input's value at every point: numbers, yes/no as such or as 1 and 0, words. */
export type Column = ArrayLike<number> | ArrayLike<boolean> | ArrayLike<string>;

/** What many points give. Numbers are as the engine hands them out, yes/no as 1 and 0; NaN where there is no answer. */
export interface Batch {
  readonly count: number;
  /** One column for each result asked for, in order. */
  readonly results: readonly Float64Array[];
  /** One set of columns for each limit, in order. */
  readonly limits: readonly LimitColumns[];
}

export interface Asked {
  readonly results: readonly string[];
  readonly limits: readonly LimitRule[];
}

const TYPE = { number: 'a number', boolean: 'yes or no', text: 'a word' } as const;

const misfit = ({ name, kind }: Input, value: unknown): RangeError =>
  new RangeError(`${name} takes ${TYPE[kind]} at every point; ${String(value)} was given.`);

/** Copies `count` numbers. Adding 0 turns a negative zero into 0. Gives back 0, or NaN if some number is not finite. */
function copied(column: Float64Array, from: number, to: Float64Array, count: number): number {
  let off = 0;
  const inFours = count - (count % 4);
  for (let i = 0; i < inFours; i += 4) {
    const a = (column[from + i] as number) + 0;
    const b = (column[from + i + 1] as number) + 0;
    const c = (column[from + i + 2] as number) + 0;
    const d = (column[from + i + 3] as number) + 0;
    to[i] = a;
    to[i + 1] = b;
    to[i + 2] = c;
    to[i + 3] = d;
    off += a - a + (b - b) + (c - c) + (d - d);
  }
  for (let i = inFours; i < count; i++) {
    const value = (column[from + i] as number) + 0;
    to[i] = value;
    off += value - value;
  }
  return off;
}

function putNumbers(
  input: Input,
  { numbers }: Lane,
  column: Float64Array,
  from: number,
  count: number,
): void {
  if (copied(column, from, numbers, count) === 0) return;
  throw misfit(
    input,
    column.slice(from, from + count).find((value) => !Number.isFinite(value)),
  );
}

/** Puts an input's values into the block. Throws a sentence for one that the input cannot hold. */
function putIn(input: Input, lane: Lane, column: Column, from: number, count: number): void {
  const { kind } = input;
  if (kind === 'number' && column instanceof Float64Array && column.length >= from + count) {
    putNumbers(input, lane, column, from, count);
  } else {
    const { numbers, any } = lane;
    for (let i = 0; i < count; i++) {
      const value = column[from + i];
      if (kind === 'number' && typeof value === 'number' && value - value === 0) numbers[i] = value + 0;
      else if (kind === 'boolean' && (value === 1 || value === 0)) numbers[i] = value;
      else if (kind === 'boolean' && typeof value === 'boolean') numbers[i] = Number(value);
      else if (kind === 'text' && typeof value === 'string' && any !== undefined) any[i] = value;
      else throw misfit(input, value);
    }
  }
  fillUp(lane, count);
}

/** A value as the engine hands it out. */
function answerOf(value: Scalar): Answer {
  if (value === null) return { value: null, why: EMPTY_SENTENCE };
  if (isTable(value)) return { value: null, why: errorSentence('VALUE', '') };
  if (isFault(value)) return { value: null, why: errorSentence(value.fault, value.message) };
  return { value: typeof value === 'number' ? handedOut(value) : value };
}

/** A slot's numbers as the engine hands them out; `numbers` is brought up to date for each block. */
class ExportedLane implements Looked {
  readonly numbers: Float64Array;
  readonly isFixed: boolean;
  readonly #lane: Lane;
  readonly #halves: Uint32Array;

  constructor(lane: Lane, size: number) {
    this.#lane = lane;
    this.#halves = halvesOf(lane.numbers);
    this.numbers = new Float64Array(size);
    this.isFixed = lane.fixed !== undefined;
    if (this.isFixed) this.putInto(this.numbers, 0, size);
  }

  missing = (i: number): boolean => {
    const { any, numbers } = this.#lane;
    if (any === undefined) return numbers[i] !== numbers[i];
    return judgedNumber(answerOf(any[i] as Scalar).value) === undefined;
  };

  /** Puts the block's numbers into a column from `at` on. */
  putInto(column: Float64Array, at: number, count: number): void {
    const lane = this.#lane;
    if (lane.kind === 'boolean') column.set(lane.numbers.subarray(0, count), at);
    else if (lane.any === undefined) exportColumn(lane.numbers, this.#halves, column, at, count);
    else {
      for (let i = 0; i < count; i++) {
        column[at + i] = judgedNumber(answerOf(read(lane, i)).value) ?? Number.NaN;
      }
    }
  }

  update(count: number): void {
    if (!this.isFixed) this.putInto(this.numbers, 0, count);
  }
}

/** A slot that says whether a limit applies, brought up to date for each block. */
class FlagLane {
  readonly flags: Float64Array;
  readonly #lane: Lane;

  constructor(lane: Lane, size: number) {
    this.#lane = lane;
    this.flags = new Float64Array(size);
  }

  update(count: number): void {
    const lane = this.#lane;
    if (lane.kind === 'boolean') this.flags.set(lane.numbers.subarray(0, count));
    else {
      for (let i = 0; i < count; i++) {
        const value = read(lane, i);
        this.flags[i] = typeof value === 'boolean' ? Number(value) : Number.NaN;
      }
    }
  }
}

const limitColumns = (count: number): LimitColumns => ({
  state: new Uint8Array(count),
  room: new Float64Array(count),
  ratio: new Float64Array(count),
});

/** Columns for so many points, to be filled again and again. */
export const batchOf = ({ results, limits }: Asked, count: number): Batch => ({
  count,
  results: results.map(() => new Float64Array(count)),
  limits: limits.map(() => limitColumns(count)),
});

/** Of cells that only limits look at which apply nowhere. */
const NOT_LOOKED_AT: Answer = { value: null, why: 'The limit does not apply.' };

/** A program at work: points in, results and limits out, as the formula engine would give them. */
export class Replay {
  readonly program: Program;
  readonly asked: Asked;
  readonly #linked: Linked;
  readonly #slots: ReadonlyMap<string, number>;
  readonly #judged = new Map<number, ExportedLane>();
  readonly #flags = new Map<number, FlagLane>();
  readonly #results: readonly ExportedLane[];
  readonly #judges: readonly JudgeBlock[];

  /** `program` must have been planned for everything asked, but for limits ruled out. `byRule` is for tests: see `link`. */
  constructor(program: Program, asked: Asked, size?: number, byRule?: boolean) {
    this.program = program;
    this.asked = asked;
    this.#linked = link(program, size, byRule);
    this.#slots = new Map(program.wanted);
    this.#results = asked.results.map((name) => new ExportedLane(this.#laneOf(name).lane, this.#linked.size));
    const looks = {
      size: this.#linked.size,
      number: (name: string) => this.#number(name),
      flag: (name: string) => this.#flag(name),
    };
    this.#judges = asked.limits.map((rule) =>
      isRuledOut(rule, program) ? judgeRuledOut : judgeBlock(rule, looks),
    );
  }

  /** Evaluates many points. `columns` hold the varied inputs in the program's order; `into` is filled if given. */
  evaluateMany(columns: readonly Column[], count: number, into: Batch = batchOf(this.asked, count)): Batch {
    const { size } = this.#linked;
    for (let from = 0; from < count; from += size) {
      const points = Math.min(size, count - from);
      this.#runBlock(columns, from, points);
      this.#results.forEach((lane, i) => {
        lane.putInto(into.results[i] as Float64Array, from, points);
      });
      this.#judges.forEach((judge, i) => {
        judge(points, into.limits[i] as LimitColumns, from);
      });
    }
    return into;
  }

  /** Evaluates one point; inputs not told keep what they hold now. Ask `answer` and `judgement` for what came of it. */
  evaluate(values: ReadonlyMap<string, Value>): void {
    const columns = this.program.inputs.map(
      ({ name, present }) => [values.get(name) ?? present] as unknown as Column,
    );
    this.#runBlock(columns, 0, 1);
  }

  /** What a wanted name came to at a point of the last block, the first by default. */
  answer(name: string, i = 0): Answer {
    return answerOf(this.unrounded(name, i));
  }

  /** The same before it is rounded as the engine rounds what it hands out. */
  unrounded(name: string, i = 0): Scalar {
    return read(this.#laneOf(name).lane, i);
  }

  /** Every limit asked for, reasons included, at a point of the last block. */
  judgement(i = 0): Judgement {
    const look = (name: string): Answer => (this.#slots.has(name) ? this.answer(name, i) : NOT_LOOKED_AT);
    return judgeRules(look, this.asked.limits);
  }

  #runBlock(columns: readonly Column[], from: number, count: number): void {
    const { inputs } = this.program;
    inputs.forEach((input, i) => {
      const column = columns[i];
      if (column === undefined)
        throw new RangeError(`${input.name} is varied, but no values were given for it.`);
      if (!input.idle) putIn(input, this.#linked.lanes[input.slot] as Lane, column, from, count);
    });
    this.#linked.run(count);
    for (const lane of this.#judged.values()) lane.update(count);
    for (const lane of this.#flags.values()) lane.update(count);
  }

  #laneOf(name: string): { slot: number; lane: Lane } {
    const slot = this.#slots.get(name);
    const lane = slot === undefined ? undefined : this.#linked.lanes[slot];
    if (slot === undefined || lane === undefined) throw new RangeError(`${name} was not planned for.`);
    return { slot, lane };
  }

  #number(name: string): ExportedLane {
    const { slot, lane } = this.#laneOf(name);
    const known = this.#judged.get(slot);
    if (known !== undefined) return known;
    const made = new ExportedLane(lane, this.#linked.size);
    this.#judged.set(slot, made);
    return made;
  }

  #flag(name: string): Float64Array {
    const { slot, lane } = this.#laneOf(name);
    const known = this.#flags.get(slot) ?? new FlagLane(lane, this.#linked.size);
    this.#flags.set(slot, known);
    return known.flags;
  }
}
