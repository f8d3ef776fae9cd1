import type { Engine } from '../../../src/workbook/engine.ts';
import { ParsedCells } from '../../../src/workbook/replay/parsed.ts';
import { isFault, type Scalar } from '../../../src/workbook/replay/scalar.ts';

/** What the engine holds for a name, before it rounds what it hands out. */
export function unroundedIn(engine: Engine, name: string): Scalar {
  const address = new ParsedCells(engine).addressOf(name);
  if (address === undefined) throw new Error(`There is no cell named ${name}.`);
  const value: unknown = engine.inside().engine.dependencyGraph.getCellValue(address);
  if (typeof value === 'number' || typeof value === 'boolean' || typeof value === 'string') return value;
  if (typeof value !== 'object' || value === null) return null;
  if ('val' in value) return value.val as number;
  const { type, message } = value as { type: string; message?: string };
  return { fault: type, message: message ?? '' };
}

/** Whether two values are the same to the last bit, errors by kind and message. */
export function isSame(a: Scalar, b: Scalar): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return Object.is(a, b);
  return isFault(a) && isFault(b) && a.fault === b.fault && a.message === b.message;
}
