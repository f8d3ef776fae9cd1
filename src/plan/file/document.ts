import './jitless.ts';
import * as z from 'zod/mini';
import { CAPS } from '../caps.ts';
import { lineHolds, linesHold } from '../text-refusal.ts';

export const KIND = 'sternmount-plan';

const reason = (holds: (text: string) => string | undefined) => (issue: { readonly input?: unknown }) =>
  `holds ${holds(String(issue.input)) ?? 'what cannot be shown'}`;

const line = (longest: number) =>
  z.string().check(
    z.maxLength(longest),
    z.refine((text) => lineHolds(text) === undefined, { error: reason(lineHolds) }),
  );

const name = line(CAPS.name).check(z.minLength(1));
const short = line(CAPS.name);
const text = line(CAPS.text);
const lines = z.string().check(
  z.maxLength(CAPS.text),
  z.refine((it) => linesHold(it) === undefined, { error: reason(linesHold) }),
);
const formula = lines.check(z.startsWith('=', { error: 'must start with =' }));

/** Names of cells, limits, tables and studies. */
const word = z
  .string()
  .check(
    z.maxLength(CAPS.name),
    z.regex(/^[a-z][a-z0-9_]*$/, { error: 'must be small letters, digits and _, a letter first' }),
  );

const readingRow = z.strictObject({
  name: word,
  /** A text is one of the input's listed words. */
  value: z.union([z.number(), z.boolean(), short, z.null()]),
  formula: z.optional(formula),
  typed: z.optional(lines),
  unit: z.optional(text),
  off_by: z.optional(z.number().check(z.nonnegative())),
  normal: z.optional(z.literal(true)),
  origin: z.enum(['reading', 'manual', 'stand-in', 'assumed', 'choice']),
  who: z.optional(text),
  when: z.optional(text),
  with: z.optional(text),
  note: z.optional(lines),
});

const limitRow = z.strictObject({
  name: word,
  result: word,
  low: z.optional(z.number()),
  high: z.optional(z.number()),
  near: z.number().check(z.nonnegative()),
  note: z.optional(lines),
});

const tableNote = z.strictObject({
  label: z.optional(short),
  off_by: z.optional(z.number().check(z.nonnegative())),
  normal: z.optional(z.literal(true)),
  who: z.optional(text),
  when: z.optional(text),
  with: z.optional(text),
  note: z.optional(lines),
});

const tableRow = z.strictObject({
  name: word,
  columns: z.array(name).check(z.minLength(1)),
  rows: z.array(z.array(z.nullable(z.number()))),
  notes: z.optional(z.array(z.nullable(tableNote))),
});

const ownCellRow = z.strictObject({
  name: word,
  label: short,
  unit: short,
  value: z.nullable(z.number()),
  formula: z.optional(formula),
  note: z.optional(lines),
});

const scenarioRow = z.strictObject({
  name,
  note: z.optional(lines),
  overrides: z.array(readingRow),
});

/** A setting becomes a key once it is read, so its name is held to what a key may be. */
const settingName = short.check(
  z.regex(/^[A-Za-z][A-Za-z0-9_]*$/, { error: 'must be letters, digits and _, a letter first' }),
);

const settingRow = z.strictObject({
  name: settingName,
  value: z.union([text, z.number(), z.boolean(), z.array(text)]),
});

const studyRow = z.strictObject({ study: name, settings: z.array(settingRow) });

const stepRow = z.strictObject({
  step: word,
  done: z.boolean(),
  value: z.optional(z.number()),
  who: z.optional(text),
  when: z.optional(text),
  note: z.optional(lines),
});

const drilledRow = z.strictObject({
  name: word,
  planned: z.union([z.number(), z.boolean(), short, z.null()]),
  who: z.optional(text),
  when: z.optional(text),
});

const wentOnRow = z.strictObject({
  step: word,
  because: lines.check(z.minLength(1)),
  despite: z.array(
    z.strictObject({ stop: word, by: z.optional(z.number().check(z.nonnegative())), says: lines }),
  ),
  who: z.optional(text),
  when: z.optional(text),
});

const untickedRow = z.strictObject({
  step: word,
  ticked_by: z.optional(text),
  ticked_when: z.optional(text),
  who: z.optional(text),
  when: z.optional(text),
});

const fitSchema = z.strictObject({
  fitted: z.array(readingRow),
  drilled: z.array(drilledRow),
  steps: z.array(stepRow),
  went_on: z.array(wentOnRow),
  unticked: z.array(untickedRow),
  handover: z.array(z.strictObject({ name: word, text: lines })),
});

/** The plan file, version 3. Everything named stands in rows, so that no name is ever a key. */
export const documentSchema = z.strictObject({
  kind: z.literal(KIND),
  version: z.number(),
  app: name,
  title: name,
  units: z.enum(['mm', 'in', 'both']),
  notes: lines,
  active: z.nullable(name),
  locked: z.array(word),
  inputs: z.array(readingRow),
  scenarios: z.array(scenarioRow),
  own_cells: z.array(ownCellRow),
  limits: z.array(limitRow),
  tables: z.array(tableRow),
  studies: z.array(studyRow),
  fit: fitSchema,
});

export type PlanDocument = z.infer<typeof documentSchema>;
export type ReadingRow = z.infer<typeof readingRow>;
