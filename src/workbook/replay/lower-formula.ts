import { functionNamed, tableFunctions } from '../../calc/catalogue.ts';
import { rowsGivenRecord } from '../../calc/survey/rows-given.ts';
import { figureName } from '../../plan/table-figures.ts';
import { tableNamed } from '../../plan/tables.ts';
import { formulaWords } from '../formula-words.ts';
import { WITHIN_TEXT } from '../longest-text.ts';
import { NO_ANSWER } from '../no-answer.ts';
import type { Address, BinaryType, Node, ParsedCells } from './parsed.ts';
import { miscounted } from './rules/library.ts';
import { TABLE_OF } from './rules/tables.ts';
import { ruleNamed } from './rules.ts';
import { NOT_FINITE, type Scalar, settled, unknownName, WRONG_COUNT } from './scalar.ts';

/** A formula with its names resolved: values, cells by number, and operations on either. */
export type Part =
  | { readonly value: Scalar }
  | { readonly cell: number }
  | { readonly op: string; readonly args: readonly Part[] };

/** Thrown inside `lower` alone: why a formula has to stay with the engine. */
export class CannotBeLowered extends Error {}

const SIGN: Readonly<Record<BinaryType, string>> = {
  CONCATENATE_OP: '&',
  EQUALS_OP: '=',
  NOT_EQUAL_OP: '<>',
  GREATER_THAN_OP: '>',
  LESS_THAN_OP: '<',
  GREATER_THAN_OR_EQUAL_OP: '>=',
  LESS_THAN_OR_EQUAL_OP: '<=',
  PLUS_OP: '+',
  MINUS_OP: '-',
  TIMES_OP: '*',
  DIV_OP: '/',
  POWER_OP: '^',
};

/** Functions for which the engine takes a bare cell reference as a range. */
const OVER_RANGES = new Set(['SUM', 'MIN', 'MAX', 'AVERAGE', 'COUNT']);

/** Functions that no owner writes. */
const OF_OUR_OWN = new Set([NO_ANSWER, WITHIN_TEXT]);

/** Names that stand for another name more often than this go round in a circle. */
const DEEPEST_NAME = 16;

export interface FormulaContext {
  readonly cells: ParsedCells;
  readonly address: Address;
  /** The number of the cell at an address. */
  numberOf(address: Address): number;
  /** Whether a study varies what this name stands for. */
  isVaried(name: string): boolean;
}

const isBinary = (node: Node): node is Extract<Node, { left: Node }> => node.type in SIGN;

/** One parsed formula with its names resolved. Throws `CannotBeLowered`. */
export function lowerFormula(node: Node, context: FormulaContext, named = 0): Part {
  const inner = (part: Node): Part => lowerFormula(part, context, named);
  if (isBinary(node)) return { op: SIGN[node.type], args: [inner(node.left), inner(node.right)] };
  switch (node.type) {
    case 'EMPTY':
      return { value: null };
    case 'NUMBER':
      return { value: Number.isFinite(node.value) ? settled(node.value) : NOT_FINITE };
    case 'STRING':
      return { value: node.value };
    case 'PARENTHESES':
      return inner(node.expression);
    case 'PLUS_UNARY_OP':
      return inner(node.value);
    case 'MINUS_UNARY_OP':
      return { op: 'negate', args: [inner(node.value)] };
    case 'PERCENT_OP':
      return { op: 'percent', args: [inner(node.value)] };
    case 'FUNCTION_CALL':
      return lowerCall(
        node.procedureName,
        node.args,
        node.procedureName === COUNTS_ROWS
          ? (part) => lowerFormula(part, { ...context, ...NOTHING_VARIED }, named)
          : inner,
      );
    case 'NAMED_EXPRESSION':
      return lowerName(node.expressionName, context, named);
    case 'CELL_REFERENCE':
      return { cell: context.numberOf(node.reference.toSimpleCellAddress(context.address)) };
    case 'CELL_RANGE':
    case 'COLUMN_RANGE':
    case 'ROW_RANGE':
    case 'ARRAY':
      throw new CannotBeLowered('it holds a range or a list');
    default:
      throw new CannotBeLowered('it holds an error');
  }
}

function lowerCall(name: string, args: readonly Node[], inner: (part: Node) => Part): Part {
  const rule = formulaWords.has(name) || OF_OUR_OWN.has(name) ? ruleNamed(name) : undefined;
  if (rule === undefined) throw new CannotBeLowered(`${name} is not among the functions a study can replay`);
  if (OVER_RANGES.has(name) && args.some((arg) => arg.type === 'CELL_REFERENCE')) {
    throw new CannotBeLowered(`${name} looks at a cell by its place rather than by its name`);
  }
  const parts = args.map(inner);
  const it = functionNamed(name) ?? tableFunctions.find((other) => other.id === name);
  const fault = it === undefined ? undefined : miscounted(it, parts.length);
  if (fault !== undefined) return { value: fault };
  if (parts.length < rule.least || parts.length > rule.most) return { value: WRONG_COUNT };
  return { op: name, args: parts };
}

/** A table: as it is, or put together at each point where some of its figures are varied. */
function lowerTable(table: string, { cells, numberOf, isVaried }: FormulaContext): Part {
  const rows = cells.table(table);
  const parts = rows.map(({ at, figures }) =>
    figures.map((value, column): Part => {
      const name = figureName({ table, row: at, column });
      const address = name !== undefined && isVaried(name) ? cells.addressOf(name) : undefined;
      return address === undefined ? { value } : { cell: numberOf(address) };
    }),
  );
  return parts.flat().every((part) => 'value' in part)
    ? { value: { rows: rows.map((it) => it.figures) } }
    : { op: TABLE_OF, args: [{ value: parts[0]?.length ?? 0 }, ...parts.flat()] };
}

/** Which rows a table has does not follow from the numbers in them. */
const COUNTS_ROWS = rowsGivenRecord.id;
const NOTHING_VARIED = { isVaried: () => false };

function lowerName(name: string, context: FormulaContext, named: number): Part {
  if (tableNamed(name.toLowerCase()) !== undefined) return lowerTable(name.toLowerCase(), context);
  const meaning = context.cells.meaningOf(name);
  if (meaning === undefined) return { value: unknownName(name) };
  if (named > DEEPEST_NAME) throw new CannotBeLowered(`the name ${name} stands for itself`);
  const parsed = context.cells.at(meaning);
  if (parsed.at === 'list') throw new CannotBeLowered(`the name ${name} stands for a list`);
  if (parsed.at === 'value') return { value: parsed.value };
  return lowerFormula(parsed.node, { ...context, address: meaning }, named + 1);
}
