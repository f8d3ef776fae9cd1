import type { Given, LibraryFunction } from '../../calc/record.ts';

function written(given: Given): string {
  if (typeof given === 'boolean') return given ? 'TRUE' : 'FALSE';
  if (typeof given === 'number') return String(given);
  return given.length === 0 ? 'no table' : `table of ${given.map((row) => row.join(' ')).join(', ')}`;
}

/** Significant figures of a worked answer: as many as anybody checks by hand. */
const FIGURES = 8;

function answered({ flag, unit, example }: LibraryFunction): string {
  if (flag === true) return example.answer === 1 ? 'TRUE' : 'FALSE';
  const figure = String(Number(example.answer.toPrecision(FIGURES)));
  return unit === '–' ? figure : `${figure} ${unit}`;
}

/** The worked example of a library function as one line: the call with its numbers, and what it gives. */
export const exampleOf = (it: LibraryFunction): string =>
  `${it.id}(${it.example.given.map(written).join('; ')}) = ${answered(it)}`;
