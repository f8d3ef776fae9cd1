import {
  CellError,
  EmptyValue,
  ErrorType,
  FunctionArgumentType,
  FunctionPlugin,
  HyperFormula,
  SimpleRangeValue,
} from 'hyperformula';
import { NoAnswer } from '../calc/answer.ts';
import { catalogue, tableFunctions } from '../calc/catalogue.ts';
import { call, type Given, type LibraryFunction, type Table, type TableFunction } from '../calc/record.ts';
import {
  type Called,
  countSentence,
  emptySentence,
  fitted,
  rangeSentence,
  UNTOLD_SENTENCE,
  wordSentence,
} from './library-arguments.ts';
import { textRefusal, WITHIN_TEXT } from './longest-text.ts';
import { NO_ANSWER } from './no-answer.ts';
import { remainder } from './remainder.ts';

type Asts = Parameters<FunctionPlugin['runFunction']>[0];
type State = Parameters<FunctionPlugin['runFunction']>[1];
type Result = ReturnType<FunctionPlugin['runFunction']>;

const noAnswer = (why: string): CellError => new CellError(ErrorType.NA, why);

const methodOf = (id: string): string => `run_${id.toLowerCase()}`;

function tableOf(value: SimpleRangeValue): Table {
  return value.data
    .map((row) => row.map((cell) => (typeof cell === 'number' ? cell : Number.NaN)))
    .filter((row) => row.every((cell) => !Number.isNaN(cell)));
}

/** The engine's numbers that carry a format, such as a percentage. */
const isRichNumber = (value: unknown): value is { val: number } =>
  typeof value === 'object' && value !== null && 'val' in value && typeof value.val === 'number';

/** One argument as the library takes it, or the error to hand on. */
function given(it: Called, i: number, value: unknown): Given | CellError {
  if (typeof value === 'number' || typeof value === 'boolean') {
    const fit = fitted(it, i, value);
    return 'why' in fit ? noAnswer(fit.why) : fit.given;
  }
  if (value instanceof CellError) return value;
  if (value instanceof SimpleRangeValue) {
    return it.arguments[i]?.type === 'table' ? tableOf(value) : noAnswer(rangeSentence(it, i));
  }
  if (value === EmptyValue) return noAnswer(emptySentence(it, i));
  if (isRichNumber(value)) return given(it, i, value.val);
  return noAnswer(wordSentence(it, i, String(value)));
}

/** The library as engine functions. Arguments are read directly: the engine's own coercion would let text through. */
class Library extends FunctionPlugin {
  static override implementedFunctions = Object.fromEntries([
    ...[...catalogue, ...tableFunctions].map((it) => [
      it.id,
      {
        method: methodOf(it.id),
        parameters: it.arguments.map((argument) => ({
          argumentType: argument.type === 'table' ? FunctionArgumentType.RANGE : FunctionArgumentType.ANY,
          ...('default' in argument ? { optionalArg: true } : {}),
        })),
      },
    ]),
    [NO_ANSWER, { method: methodOf(NO_ANSWER), parameters: [{ argumentType: FunctionArgumentType.STRING }] }],
    [
      WITHIN_TEXT,
      { method: methodOf(WITHIN_TEXT), parameters: [{ argumentType: FunctionArgumentType.ANY }] },
    ],
    [
      'MOD',
      {
        method: methodOf('MOD'),
        parameters: [
          { argumentType: FunctionArgumentType.NUMBER },
          { argumentType: FunctionArgumentType.NUMBER },
        ],
      },
    ],
  ]);

  /** A call's arguments as the library takes them, or the first error among them. */
  read(it: Called, asts: Asts, state: State): Given[] | CellError {
    const miscounted = countSentence(it, asts.length);
    if (miscounted !== undefined) return noAnswer(miscounted);
    const values: Given[] = [];
    for (let i = 0; i < asts.length; i++) {
      const value = given(it, i, this.evaluateAst(asts[i] as Asts[number], state));
      if (value instanceof CellError) return value;
      if (i === 0 && value === false && tableFunctions.some((other) => other.id === it.id)) return [value];
      values.push(value);
    }
    return values;
  }

  /** A table; when its first argument says that it is not wanted, the others are not looked at. */
  table(it: TableFunction, asts: Asts, state: State): Result {
    const values = this.read(it, asts, state);
    if (values instanceof CellError) return values;
    const rows = values[0] === false ? [] : (it.run as (...given: readonly Given[]) => Table)(...values);
    return SimpleRangeValue.onlyValues(
      rows.length === 0 ? [[EmptyValue, EmptyValue]] : rows.map((row) => [...row]),
    );
  }

  run(it: LibraryFunction, asts: Asts, state: State): Result {
    const values = this.read(it, asts, state);
    if (values instanceof CellError) return values;
    const answer = call(it, values);
    if (answer instanceof NoAnswer) return noAnswer(answer.why);
    return it.flag ? answer === 1 : answer;
  }

  tell(asts: Asts, state: State): Result {
    const why = this.evaluateAst(asts[0] as Asts[number], state);
    return noAnswer(typeof why === 'string' ? why : UNTOLD_SENTENCE);
  }

  within(asts: Asts, state: State): ReturnType<Library['evaluateAst']> {
    const value = this.evaluateAst(asts[0] as Asts[number], state);
    const why = typeof value === 'string' ? textRefusal(value) : undefined;
    return why === undefined ? value : noAnswer(why);
  }

  mod(asts: Asts, state: State): Result {
    return this.runFunction(asts, state, this.metadata('MOD'), (dividend: number, divisor: number) =>
      divisor === 0 ? new CellError(ErrorType.DIV_BY_ZERO) : remainder(dividend, divisor),
    );
  }
}

for (const it of catalogue) {
  Object.defineProperty(Library.prototype, methodOf(it.id), {
    value(this: Library, ast: { args: Asts }, state: State) {
      return this.run(it, ast.args, state);
    },
  });
}
for (const it of tableFunctions) {
  Object.defineProperty(Library.prototype, methodOf(it.id), {
    value(this: Library, ast: { args: Asts }, state: State) {
      return this.table(it, ast.args, state);
    },
  });
}
Object.defineProperty(Library.prototype, methodOf(NO_ANSWER), {
  value(this: Library, ast: { args: Asts }, state: State) {
    return this.tell(ast.args, state);
  },
});
Object.defineProperty(Library.prototype, methodOf(WITHIN_TEXT), {
  value(this: Library, ast: { args: Asts }, state: State) {
    return this.within(ast.args, state);
  },
});
Object.defineProperty(Library.prototype, methodOf('MOD'), {
  value(this: Library, ast: { args: Asts }, state: State) {
    return this.mod(ast.args, state);
  },
});

let registered = false;

/** Registers the library with the engine, once, and takes out what could reach outside the workbook. */
export function registerLibrary(): void {
  if (registered) return;
  registered = true;
  const names = Object.fromEntries(Object.keys(Library.implementedFunctions).map((id) => [id, id]));
  HyperFormula.registerFunctionPlugin(Library, { enGB: names });
  HyperFormula.unregisterFunction('HYPERLINK');
}
