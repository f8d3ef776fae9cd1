import { record, type Table } from '../record.ts';

export const rowsGivenRecord = record({
  id: 'ROWS_GIVEN',
  title: 'Complete rows of a table',
  arguments: [{ name: 'table', unit: '–', meaning: 'The table', type: 'table' }],
  unit: '–',
  formula: 'how many rows have every figure',
  source: 'counting',
  example: {
    given: [
      [
        [1, 2],
        [3, 4],
      ],
    ],
    answer: 2,
    tolerance: 0,
    source: 'two rows',
  },
  run: (table: Table) => table.length,
});
