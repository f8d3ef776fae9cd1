import * as z from 'zod/mini';
import { CLASSES } from '../calc/limits/classes.ts';

/** Pages of the workbook, in the order of the work. */
export const PAGES = ['Survey', 'Boat', 'Gear', 'Mount', 'Checks', 'Loads', 'Parts'] as const;
export type Page = (typeof PAGES)[number];

const name = z.string().check(z.regex(/^[a-z][a-z0-9_]*$/), z.maxLength(64));

const inputSchema = z.strictObject({
  kind: z.enum(['input', 'choice']),
  name,
  label: z.string().check(z.maxLength(60)),
  short: z.string().check(z.maxLength(24)),
  help: z.string().check(z.minLength(10)),
  type: z.enum(['number', 'whole', 'flag', 'word']),
  words: z.optional(z.array(z.string())),
  /** What a whole number counts, one and several. */
  noun: z.optional(z.tuple([z.string(), z.string()])),
  unit: z.string(),
  value: z.union([z.number(), z.boolean(), z.string()]),
  off_by: z.number().check(z.nonnegative()),
  min: z.optional(z.number()),
  max: z.optional(z.number()),
  above: z.optional(z.number()),
  only: z.optional(z.array(z.number())),
  usual: z.optional(z.tuple([z.number(), z.number()])),
  step: z.optional(z.number().check(z.positive())),
  step_in: z.optional(z.number().check(z.positive())),
  where: z.enum(['reading', 'manual', 'assumed', 'choice']),
  tool: z.optional(z.string()),
  source: z.optional(z.string()),
  first: z.optional(z.boolean()),
  picture: z.optional(z.string()),
  /** It matters only once one of these survey tables has rows; none: only where a reading is taken over from it. */
  with_table: z.optional(z.array(name)),
});

const resultSchema = z.strictObject({
  kind: z.literal('result'),
  name,
  label: z.string().check(z.maxLength(60)),
  short: z.string().check(z.maxLength(24)),
  help: z.string().check(z.minLength(10)),
  unit: z.string(),
  flag: z.optional(z.boolean()),
  formula: z.string().check(z.startsWith('=')),
});

const boundSchema = z.union([z.number(), name, z.strictObject({ minus: name })]);

const limitSchema = z.strictObject({
  kind: z.literal('limit'),
  name,
  result: name,
  low: z.optional(boundSchema),
  high: z.optional(boundSchema),
  near: z.number().check(z.nonnegative()),
  applies: z.optional(z.union([name, z.strictObject({ not: name })])),
  graded: z.optional(z.boolean()),
  must_exist: z.optional(z.boolean()),
  low_is_outside: z.optional(z.boolean()),
  /** What it means when it is outside. */
  class: z.enum(CLASSES),
  /** It cannot be built, whatever its class, where its value is below this, in the result's unit. */
  unbuildable_below: z.optional(z.number()),
  source: z.enum([
    "gear's manual",
    'published source',
    "owner's choice",
    'common practice, no source',
    'assumed',
    'geometry',
  ]),
  says: z.string(),
  /** What is said instead where the value is negative; it then stands there without its sign. */
  says_below_0: z.optional(z.string()),
  outside: z.optional(z.string()),
  /** Why it cannot be built, where it cannot, as it stands behind a colon; {by} is the value without its sign. */
  unbuildable: z.optional(z.string()),
});

export const pageSchema = z.strictObject({
  page: z.enum(PAGES),
  sections: z.array(
    z.strictObject({
      title: z.string(),
      lead: z.string(),
      cells: z.array(z.discriminatedUnion('kind', [inputSchema, resultSchema])),
    }),
  ),
});

const columnSchema = z.strictObject({
  name,
  label: z.string().check(z.maxLength(30)),
  help: z.string().check(z.minLength(10)),
  unit: z.literal('mm'),
  min: z.number(),
  max: z.number(),
  usual: z.optional(z.tuple([z.number(), z.number()])),
});

export const tablesSchema = z.strictObject({
  tables: z.array(
    z.strictObject({
      name,
      label: z.string().check(z.maxLength(60)),
      /** As inside a sentence. */
      short: z.string().check(z.maxLength(40)),
      /** What is fitted through its rows; the second column is what was read. */
      fit: z.optional(z.enum(['line', 'circle'])),
      help: z.string().check(z.minLength(10)),
      off_by: z.number().check(z.nonnegative()),
      columns: z.array(columnSchema).check(z.minLength(1)),
    }),
  ),
});

export const limitsSchema = z.strictObject({ limits: z.array(limitSchema) });

export type InputCell = z.infer<typeof inputSchema>;
export type ResultCell = z.infer<typeof resultSchema>;
export type Bound = z.infer<typeof boundSchema>;
export type LimitCell = z.infer<typeof limitSchema>;
export type TableTemplate = z.infer<typeof tablesSchema>['tables'][number];
export type TableColumn = z.infer<typeof columnSchema>;
export type PageTemplate = z.infer<typeof pageSchema>;
