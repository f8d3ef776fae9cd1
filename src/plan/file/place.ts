import { quoted } from '../../units/quoted.ts';
import { isJsonObject } from './json-object.ts';

/** What a row is called: its name, or the study it is for. */
const nameOf = (row: unknown): string => {
  const name = isJsonObject(row) ? (row.name ?? row.study) : undefined;
  return typeof name === 'string' ? ` (${quoted(name)})` : '';
};

/** A place in a document, such as "inputs, row 12 (tube_od), off_by"; '' for the whole. */
export function place(path: readonly PropertyKey[], document: unknown): string {
  const words: string[] = [];
  let inner: unknown = document;
  for (const key of path) {
    if (Array.isArray(inner) && typeof key === 'number') {
      inner = inner[key];
      words.push(`row ${key + 1}${nameOf(inner)}`);
    } else {
      inner = isJsonObject(inner) ? inner[String(key)] : undefined;
      words.push(quoted(String(key)));
    }
  }
  return words.join(', ');
}
