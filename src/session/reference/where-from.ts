import type { InputCell, ResultCell } from '../../plan/template.ts';

const WHERE: Readonly<Record<InputCell['where'], string>> = {
  reading: 'read off the boat',
  manual: 'the gear’s manual, or measured on the gear',
  assumed: 'assumed, until you know better',
  choice: 'your choice',
};

const withTool = (cell: InputCell): string =>
  cell.tool === undefined || cell.tool === 'none' || cell.where !== 'reading' ? '' : `, with: ${cell.tool}`;

/** Where a cell's value comes from, as words; a result's is its formula. */
export function whereFrom(cell: InputCell | ResultCell): string {
  if (cell.kind === 'result') return cell.formula;
  const source = cell.source === undefined ? '' : `; ${cell.source}`;
  return `${WHERE[cell.where]}${withTool(cell)}${source}`;
}
