import { inputNamed, resultNamed } from '../plan/book.ts';
import { refusal } from '../plan/bounds.ts';
import type { Origin, Plan, Reading, Value } from '../plan/plan.ts';
import { clash } from '../plan/relations.ts';
import type { InputCell } from '../plan/template.ts';
import { parseEntry } from '../units/parse-entry.ts';
import { isCellName } from './contents.ts';
import { readFormula } from './formula.ts';

export type Entered =
  | { readonly ok: true; readonly reading: Reading }
  | { readonly ok: false; readonly why: string };

const no = (why: string): Entered => ({ ok: false, why });

const OWNER: Readonly<Record<InputCell['where'], Origin>> = {
  reading: 'reading',
  manual: 'manual',
  assumed: 'reading',
  choice: 'choice',
};

const askFor = (cell: InputCell, bare: 'mm' | 'in') => ({
  name: cell.label,
  kind: cell.type === 'number' && cell.unit === 'mm' ? ('length' as const) : cell.type,
  unit: cell.unit,
  words: cell.words,
  bare,
});

/** What every reading of this input keeps when its value is entered anew. */
const kept = (cell: InputCell, before: Reading | undefined) => {
  const { who, with: tool, note, normal } = before ?? {};
  return {
    origin: OWNER[cell.where],
    offBy: before?.offBy ?? cell.off_by,
    ...(normal === undefined ? {} : { normal }),
    ...(who === undefined ? {} : { who }),
    ...(tool === undefined ? {} : { with: tool }),
    ...(note === undefined ? {} : { note }),
  };
};

function formulaReading(cell: InputCell, text: string, plan: Plan, before: Reading | undefined): Entered {
  const read = readFormula(text, (name) => isCellName(name, plan));
  if ('why' in read) return no(read.why);
  return { ok: true, reading: { ...kept(cell, before), value: null, formula: text, typed: text } };
}

/** What a person typed for an input, as a reading; or one sentence why it cannot be. */
export function enterText(
  cell: InputCell,
  text: string,
  bare: 'mm' | 'in',
  plan: Plan,
  before?: Reading,
): Entered {
  if (text.trimStart().startsWith('=')) return formulaReading(cell, text.trim(), plan, before);
  const entry = parseEntry(text, askFor(cell, bare));
  if (!entry.ok) return no(entry.why);
  if (entry.empty) return { ok: true, reading: { ...kept(cell, before), value: null } };
  const why = refusal(cell, entry.value);
  if (why !== undefined) return no(why);
  const { value, typed, unit } = entry;
  return { ok: true, reading: { ...kept(cell, before), value, typed, ...(unit === '' ? {} : { unit }) } };
}

/** A value that comes from a stepper, a slider or a file rather than from typing. */
export function enterValue(cell: InputCell, value: Value, before?: Reading): Entered {
  const why = refusal(cell, value);
  return why === undefined ? { ok: true, reading: { ...kept(cell, before), value } } : no(why);
}

/** Why a name cannot be set at all; undefined for an input. */
export function notAnInput(name: string): string | undefined {
  if (inputNamed(name) !== undefined) return undefined;
  return resultNamed(name) === undefined
    ? `There is no input named ${name}.`
    : `${name} is a result: it is worked out from other cells and cannot be set.`;
}

/** Why readings cannot stand together, when `entered` go over what is there; undefined when they can. */
export const clashWith = (
  entered: ReadonlyMap<string, Reading>,
  valueAt: (name: string) => Value,
): string | undefined =>
  clash((name) => {
    const reading = entered.get(name);
    return reading === undefined || reading.formula !== undefined ? valueAt(name) : reading.value;
  })?.why;
