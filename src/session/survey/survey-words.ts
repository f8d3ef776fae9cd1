import { type Figure, figureNamed } from '../../plan/table-figures.ts';
import { tableNamed } from '../../plan/tables.ts';

/** What a survey table, or a figure in one, is called. */
export interface SurveyWords {
  /** As inside a sentence. */
  readonly short: string;
  readonly label: string;
  readonly unit: string;
}

function figureWords({ table, row, column }: Figure): SurveyWords | undefined {
  const of = tableNamed(table);
  const { label = '', unit = '–' } = of?.columns[column] ?? {};
  if (of === undefined) return undefined;
  const place = `row ${row + 1}`;
  return of.fit === undefined
    ? {
        short: `${label.toLowerCase()} in ${place} of the ${of.short}`,
        label: `${of.label}, ${place}: ${label}`,
        unit,
      }
    : { short: `${place} of the ${of.short}`, label: `${of.label}, ${place}`, unit };
}

/** What a name stands for among the survey's tables; undefined for any other name. */
export function surveyWords(name: string): SurveyWords | undefined {
  const figure = figureNamed(name);
  if (figure !== undefined) return figureWords(figure);
  const table = tableNamed(name);
  return table && { short: table.short, label: table.label, unit: table.columns[0]?.unit ?? '–' };
}
