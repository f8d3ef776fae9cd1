import { NoAnswer } from '../../src/calc/answer.ts';
import { catalogue, tableFunctions } from '../../src/calc/catalogue.ts';
import { judge, type Verdict } from '../../src/calc/limits/judge.ts';
import { inputNamed, results } from '../../src/plan/book.ts';
import { tables } from '../../src/plan/tables.ts';
import type { Bound } from '../../src/plan/template.ts';
import type { Engine } from '../../src/workbook/engine.ts';
import { type LimitRule, limitRules } from '../../src/workbook/limit-rule.ts';
import { type Node, ParsedCells } from '../../src/workbook/replay/parsed.ts';

/** What it comes to: every result in the workbook's order, and every limit, NaN where there is none. */
export interface PlainAnswers {
  readonly results: Float64Array;
  readonly states: string[];
  readonly rooms: Float64Array;
  readonly ratios: Float64Array;
}

/** Base values by name. */
export type PlainInputs = Readonly<Record<string, number | boolean | string>>;

export type PlainPlan = (it: PlainInputs, to: PlainAnswers) => void;

const OPERATORS: Readonly<Record<string, string>> = {
  EQUALS_OP: '===',
  NOT_EQUAL_OP: '!==',
  GREATER_THAN_OP: '>',
  LESS_THAN_OP: '<',
  GREATER_THAN_OR_EQUAL_OP: '>=',
  LESS_THAN_OR_EQUAL_OP: '<=',
  PLUS_OP: '+',
  MINUS_OP: '-',
  TIMES_OP: '*',
  DIV_OP: '/',
  POWER_OP: '**',
};

const STANDARD: Readonly<Record<string, (...given: string[]) => string>> = {
  IF: (test = '', yes = '', no = 'false') => `(${test} ? ${yes} : ${no})`,
  AND: (...all) => `(${all.join(' && ')})`,
  OR: (...all) => `(${all.join(' || ')})`,
  NOT: (it) => `!${it}`,
  MIN: (...all) => `Math.min(${all.join(', ')})`,
  MAX: (...all) => `Math.max(${all.join(', ')})`,
  ABS: (it) => `Math.abs(${it})`,
  SQRT: (it) => `Math.sqrt(${it})`,
  COS: (it) => `Math.cos(${it})`,
  SIN: (it) => `Math.sin(${it})`,
  TAN: (it) => `Math.tan(${it})`,
  RADIANS: (it) => `((${it} * Math.PI) / 180)`,
};

const LIBRARY = new Map([...catalogue, ...tableFunctions].map((it) => [it.id, it]));

/** Writes the workbook's formulas out as plain code, each result a line, after those that it needs. */
class Writer {
  readonly lines: string[] = [];
  readonly called = new Set<string>();
  readonly #cells: ParsedCells;
  readonly #written = new Set<string>();

  constructor(engine: Engine) {
    this.#cells = new ParsedCells(engine);
  }

  /** The code for a name. */
  name(name: string): string {
    if (name === 'true' || name === 'false') return name;
    if (inputNamed(name) !== undefined) return `it.${name}`;
    if (tables.some((table) => table.name === name)) return 'NO_ROWS';
    if (!this.#written.has(name)) this.#result(name);
    return name;
  }

  #result(name: string): void {
    const address = this.#cells.addressOf(name);
    const parsed = address && this.#cells.at(address);
    if (parsed?.at !== 'formula') throw new Error(`${name} is no formula.`);
    const code = this.#code(parsed.node);
    this.lines.push(`const ${name} = ${code};`);
    this.#written.add(name);
  }

  #code(node: Node): string {
    switch (node.type) {
      case 'NUMBER':
      case 'STRING':
        return JSON.stringify(node.value);
      case 'PARENTHESES':
        return this.#code(node.expression);
      case 'MINUS_UNARY_OP':
        return `-${this.#code(node.value)}`;
      case 'NAMED_EXPRESSION':
        return this.name(node.expressionName.toLowerCase());
      case 'FUNCTION_CALL':
        return this.#call(node.procedureName, node.args);
      default: {
        const operator = OPERATORS[node.type];
        if (operator === undefined || !('left' in node)) throw new Error(`${node.type} is not written out.`);
        return `(${this.#code(node.left)} ${operator} ${this.#code(node.right)})`;
      }
    }
  }

  #call(name: string, args: readonly Node[]): string {
    const given = args.map((node) => this.#code(node));
    const standard = STANDARD[name];
    if (standard !== undefined) return standard(...given);
    const library = LIBRARY.get(name);
    if (library === undefined) throw new Error(`${name} is not written out.`);
    this.called.add(name);
    const call = `known(${name}(${given.join(', ')}))`;
    return 'flag' in library && library.flag === true ? `(${call} === 1)` : call;
  }

  limit(rule: LimitRule, at: number): void {
    const value = this.name(rule.result);
    const applies = rule.applies === undefined ? 'true' : this.#applies(rule.applies);
    const parts = [
      `value: valueAt(Number(${value}))`,
      ...(rule.low === undefined ? [] : [`low: ${this.#bound(rule.low)}`]),
      ...(rule.high === undefined ? [] : [`high: ${this.#bound(rule.high)}`]),
      `near: ${rule.near}`,
      `applies: ${applies}`,
      `graded: ${rule.graded}`,
      `mustExist: ${rule.mustExist}`,
      `lowIsOutside: ${rule.lowIsOutside}`,
    ];
    this.lines.push(`put(to, ${at}, judge({ ${parts.join(', ')} }));`);
  }

  #applies(it: NonNullable<LimitRule['applies']>): string {
    const code = this.name(typeof it === 'string' ? it : it.not);
    return typeof it === 'string' ? code : `!${code}`;
  }

  #bound(it: Bound): string {
    if (typeof it === 'number') return String(it);
    return typeof it === 'string' ? `Number(${this.name(it)})` : `-Number(${this.name(it.minus)})`;
  }
}

const known = <T>(answer: T | NoAnswer): T | number => (answer instanceof NoAnswer ? Number.NaN : answer);

const valueAt = (value: number): number | undefined => (Number.isNaN(value) ? undefined : value);

function put(to: PlainAnswers, i: number, verdict: Verdict): void {
  to.states[i] = verdict.state;
  to.rooms[i] = verdict.room ?? Number.NaN;
  to.ratios[i] = verdict.ratio ?? Number.NaN;
}

/**
 * The workbook's own plan as somebody would write it by hand, with the same library and no formula engine: what the
 * replay's speed is measured against. It is printed from the engine's own parsed formulas, keeps none of the engine's
 * rounding, checks no bounds, tells no reasons, and knows a plan without rows in its survey.
 */
export function plainPlanOf(engine: Engine): PlainPlan {
  const writer = new Writer(engine);
  results.forEach(({ name }, i) => {
    writer.lines.push(`to.results[${i}] = Number(${writer.name(name)});`);
  });
  limitRules().forEach((rule, i) => {
    writer.limit(rule, i);
  });
  const called = [...writer.called];
  const make = new Function(
    ...['known', 'valueAt', 'put', 'judge', 'NO_ROWS', ...called],
    `return (it, to) => {\n${writer.lines.join('\n')}\n};`,
  ) as (...given: unknown[]) => PlainPlan;
  return make(known, valueAt, put, judge, [], ...called.map((id) => LIBRARY.get(id)?.run));
}
