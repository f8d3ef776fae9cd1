import { figureName, figureNamed } from '../../plan/table-figures.ts';
import type { Engine } from '../engine.ts';
import { type CompleteRow, tablePlaces } from '../table-sheet.ts';
import { type Fault, type Scalar, settled } from './scalar.ts';

/** A part of a formula as the engine's parser left it; the kinds that can be lowered carry their fields. */
export type Node =
  | { readonly type: 'EMPTY' }
  | { readonly type: 'NUMBER'; readonly value: number }
  | { readonly type: 'STRING'; readonly value: string }
  | {
      readonly type: 'MINUS_UNARY_OP' | 'PLUS_UNARY_OP' | 'PERCENT_OP';
      readonly value: Node;
    }
  | { readonly type: BinaryType; readonly left: Node; readonly right: Node }
  | { readonly type: 'PARENTHESES'; readonly expression: Node }
  | { readonly type: 'FUNCTION_CALL'; readonly procedureName: string; readonly args: readonly Node[] }
  | { readonly type: 'NAMED_EXPRESSION'; readonly expressionName: string }
  | { readonly type: 'CELL_REFERENCE'; readonly reference: Reference }
  | {
      readonly type: 'CELL_RANGE' | 'COLUMN_RANGE' | 'ROW_RANGE' | 'ARRAY' | 'ERROR' | 'ERROR_WITH_RAW_INPUT';
    };

export type BinaryType =
  | 'CONCATENATE_OP'
  | 'EQUALS_OP'
  | 'NOT_EQUAL_OP'
  | 'GREATER_THAN_OP'
  | 'LESS_THAN_OP'
  | 'GREATER_THAN_OR_EQUAL_OP'
  | 'LESS_THAN_OR_EQUAL_OP'
  | 'PLUS_OP'
  | 'MINUS_OP'
  | 'TIMES_OP'
  | 'DIV_OP'
  | 'POWER_OP';

export interface Address {
  readonly sheet: number;
  readonly col: number;
  readonly row: number;
}

interface Reference {
  toSimpleCellAddress(from: Address): Address;
}

/** What stands at an address: a value, or a formula. */
export type Parsed =
  | { readonly at: 'value'; readonly value: Scalar }
  | { readonly at: 'formula'; readonly node: Node }
  | { readonly at: 'list' };

interface Names {
  readonly _namedExpressions: {
    nearestNamedExpression(name: string, sheet: number): { address: Address } | undefined;
  };
}

interface Formula {
  getFormula(service: unknown): unknown;
}

/** The engine's errors, and its numbers that carry a format, by shape. */
const isEngineError = (value: object): value is { type: string; message?: string } => 'type' in value;
const isRich = (value: object): value is { val: number } => 'val' in value;

function scalarOf(value: unknown): Scalar {
  if (typeof value === 'number') return settled(value);
  if (typeof value === 'boolean' || typeof value === 'string') return value;
  if (typeof value !== 'object' || value === null) return null;
  if (isRich(value)) return settled(value.val);
  if (isEngineError(value)) return { fault: value.type, message: value.message ?? '' } satisfies Fault;
  return null;
}

/**
 * Looks into the formula engine for its own parsed formulas. All of it is internal to the engine, which is why its
 * version is pinned and the replay is proved against it before a study trusts it.
 */
export class ParsedCells {
  readonly #inside: ReturnType<Engine['inside']>;

  constructor(engine: Engine) {
    this.#inside = engine.inside();
  }

  /** Where a name's cell is, or a table's figure. */
  addressOf(name: string): Address | undefined {
    const figure = figureNamed(name);
    if (figure !== undefined) {
      const { column: from = 0 } = tablePlaces.find((it) => it.name === figure.table) ?? {};
      return { sheet: this.#inside.tableSheet, col: from + figure.column, row: figure.row };
    }
    const row = this.#inside.rows.get(name);
    return row === undefined ? undefined : { sheet: this.#inside.sheet, col: 0, row };
  }

  /** What the cell at an address is called; deleted ones keep their name. */
  nameAt({ sheet, col, row }: Address): string | undefined {
    if (sheet === this.#inside.sheet) return col === 0 ? this.#inside.nameOfRow[row] : undefined;
    const place = tablePlaces.find(({ column, width }) => col >= column && col < column + width);
    return sheet !== this.#inside.tableSheet || place === undefined
      ? undefined
      : figureName({ table: place.name, row, column: col - place.column });
  }

  /** Where what a name in a formula stands for is. */
  meaningOf(name: string): Address | undefined {
    const { engine, sheet } = this.#inside;
    return (engine as unknown as Names)._namedExpressions.nearestNamedExpression(name, sheet)?.address;
  }

  /** The complete rows of a survey table. */
  table(name: string): readonly CompleteRow[] {
    return this.#inside.table(name);
  }

  at(address: Address): Parsed {
    const { engine } = this.#inside;
    const vertex = engine.dependencyGraph.getCell(address);
    if (vertex === undefined) return { at: 'value', value: null };
    // A formula that gives a list shares one vertex over its cells. Class names are no help: a build shortens them.
    if ('array' in vertex) return { at: 'list' };
    if (!('getFormula' in vertex)) return { at: 'value', value: scalarOf(vertex.getCellValue()) };
    const formula: unknown = (vertex as Formula).getFormula(engine.lazilyTransformingAstService);
    // A formula that could not be parsed is kept as its text.
    return typeof formula === 'string'
      ? { at: 'value', value: scalarOf(vertex.getCellValue()) }
      : { at: 'formula', node: formula as Node };
  }
}
