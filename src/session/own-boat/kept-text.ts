import * as z from 'zod/mini';
import { nothingYet, type OwnBoatState } from './own-boat.ts';
import { firstInputs, stepsOf } from './steps.ts';

const schema = z.strictObject({
  version: z.literal(1),
  answers: z.strictObject({
    units: z.optional(z.enum(['mm', 'in', 'both'])),
    lying: z.optional(z.enum(['afloat', 'ashore'])),
    lean: z.optional(z.enum(['aft', 'upright', 'forward'])),
    manual: z.optional(z.enum(['yes', 'no'])),
  }),
  typed: z.array(z.tuple([z.string(), z.string().check(z.maxLength(200))])),
  left: z.array(z.string()),
  at: z.int().check(z.nonnegative()),
});

/** How far somebody has come, as text that outlives the page: a phone drops a page that is not looked at. */
export const textOf = ({ answers, typed, left, at }: OwnBoatState): string =>
  JSON.stringify({ version: 1, answers, typed: [...typed], left: [...left], at });

const isFirst = (name: string): boolean => firstInputs.some((cell) => cell.name === name);

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** The state a text stands for; nothing yet when it is not one of ours. */
export function stateOf(text: string | null): OwnBoatState {
  const read = schema.safeParse(text === null ? undefined : parsed(text));
  if (!read.success) return nothingYet;
  const { answers, typed, left, at } = read.data;
  return {
    answers: {
      ...(answers.units === undefined ? {} : { units: answers.units }),
      ...(answers.lying === undefined ? {} : { lying: answers.lying }),
      ...(answers.lean === undefined ? {} : { lean: answers.lean }),
      ...(answers.manual === undefined ? {} : { manual: answers.manual }),
    },
    typed: new Map(typed.filter(([name]) => isFirst(name))),
    left: new Set(left.filter(isFirst)),
    at: Math.min(at, stepsOf(answers as OwnBoatState['answers']).length),
  };
}
