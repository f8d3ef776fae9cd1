import tables from '../../templates/tables.json';
import { inputs, limitCells, results } from '../plan/book.ts';

const list = (constant: string, type: string, names: readonly string[]): string =>
  [
    `export const ${constant} = [`,
    ...names.map((name) => `  '${name}',`),
    '] as const;',
    `export type ${type} = (typeof ${constant})[number];`,
  ].join('\n');

const named = (cells: readonly { readonly name: string }[]): readonly string[] =>
  cells.map(({ name }) => name);

/** The text of `src/plan/names.ts`: every name of the templates, in their order. */
export const namesModule = (): string =>
  `${[
    '// Written by `npm run names` from templates/; do not change it by hand.',
    list('INPUT_NAMES', 'InputName', named(inputs)),
    list('RESULT_NAMES', 'ResultName', named(results)),
    list('LIMIT_NAMES', 'LimitName', named(limitCells)),
    list('TABLE_NAMES', 'TableName', named(tables.tables)),
    'export type CellName = InputName | ResultName;',
  ].join('\n\n')}\n`;
