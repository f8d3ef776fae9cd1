import type { Rule } from '../rule.ts';
import type { Scalar } from '../scalar.ts';

/** Puts a table together from its figures, row by row; how many make a row stands before them. */
export const TABLE_OF = 'table of';

function tableOf([width, ...figures]: readonly Scalar[]): Scalar {
  const [each, numbers] = [width as number, figures as readonly number[]];
  const rows: number[][] = [];
  for (let at = 0; at < numbers.length; at += each) rows.push(numbers.slice(at, at + each));
  return { rows };
}

/** What stands for a table's name where a study varies its figures, which are always numbers. */
export const tables: Readonly<Record<string, Rule>> = {
  [TABLE_OF]: { least: 1, most: Number.POSITIVE_INFINITY, kind: 'mixed', run: tableOf },
};
