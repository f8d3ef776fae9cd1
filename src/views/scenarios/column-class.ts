/** The class of a column's cells; where there is room for one column, only the picked one is shown. */
export const columnClass = (column: string | null, picked: string | null): string =>
  column === picked ? 'scenarios-col' : 'scenarios-col scenarios-other';
