import type { core } from 'zod/mini';
import { listed } from '../../units/entry-sentences.ts';
import { quoted } from '../../units/quoted.ts';
import { isJsonObject } from './json-object.ts';
import { place } from './place.ts';

/** What is wrong with a document, and where. */
export interface Fault {
  readonly where: string;
  readonly why: string;
  /** A cap was passed. */
  readonly tooLarge?: true;
}

const KINDS: Readonly<Record<string, string>> = {
  array: 'a list',
  object: 'an object',
  string: 'a text',
  number: 'a number',
  boolean: 'true or false',
  null: 'null',
};

const kindOf = (value: unknown): string =>
  KINDS[value === null ? 'null' : Array.isArray(value) ? 'array' : typeof value] ?? 'something else';

/** A value as it is told back; an object cannot be, for it may hold what turns it into a text. */
const shown = (value: unknown): string =>
  typeof value === 'object' && value !== null ? kindOf(value) : quoted(String(value));

const at = (document: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (inner, key) =>
      Array.isArray(inner) && typeof key === 'number'
        ? inner[key]
        : isJsonObject(inner) && typeof key === 'string' && Object.hasOwn(inner, key)
          ? inner[key]
          : undefined,
    document,
  );

/** What an issue says about the value in its place, as the end of a sentence. */
function complaint(issue: core.$ZodIssue, value: unknown): string {
  if (value === undefined) return 'is missing';
  switch (issue.code) {
    case 'unrecognized_keys':
      return `has ${issue.keys.map(quoted).join(', ')}, which a plan does not have there`;
    case 'invalid_type':
      return `must be ${KINDS[issue.expected] ?? issue.expected}, not ${kindOf(value)}`;
    case 'invalid_value':
      return `must be ${listed(issue.values.map(String))}, not ${shown(value)}`;
    case 'invalid_union':
      return `cannot be ${kindOf(value)}`;
    case 'too_big':
      return `is longer than ${issue.maximum} characters`;
    case 'too_small':
      if (issue.origin === 'number') return `must be at least ${issue.minimum}, not ${value}`;
      return issue.origin === 'array' ? 'is an empty list' : 'is empty';
    default:
      return issue.message;
  }
}

/** The first issue of a document as a sentence; `document` is what was read. */
export function faultOfIssue(issue: core.$ZodIssue, document: unknown): Fault {
  const where = place(issue.path, document);
  const why = `${where === '' ? 'The plan' : where} ${complaint(issue, at(document, issue.path))}.`;
  return { where, why, ...(issue.code === 'too_big' ? { tooLarge: true } : {}) };
}
