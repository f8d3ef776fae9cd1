import { cellNamed, inputs, limitCells, limitNamed, results } from '../plan/book.ts';
import { type OwnCell, type Plan, type Reading, readingOf } from '../plan/plan.ts';
import type { Bound, LimitCell } from '../plan/template.ts';
import type { Content } from './engine.ts';
import { type Formula, readFormula } from './formula.ts';
import { reasonFormula } from './no-answer.ts';

const ROOM = '_room';

/** Characters of a cell's text that a sentence shows. */
const SHOWN = 24;

const boundText = (bound: Bound): string => (typeof bound === 'object' ? `(-${bound.minus})` : String(bound));

const ownNames = new WeakMap<readonly OwnCell[], ReadonlySet<string>>();

function ownNamesOf({ ownCells }: Plan): ReadonlySet<string> {
  const known = ownNames.get(ownCells);
  if (known !== undefined) return known;
  const names = new Set(ownCells.map(({ name }) => name));
  ownNames.set(ownCells, names);
  return names;
}

/** Names a formula may use: inputs, results, the plan's own cells, and the room of any graded limit. */
export function isCellName(name: string, plan: Plan): boolean {
  if (cellNamed(name) !== undefined || ownNamesOf(plan).has(name)) return true;
  const limit = name.endsWith(ROOM) ? limitNamed(name.slice(0, -ROOM.length)) : undefined;
  return limit !== undefined && limit.graded !== false;
}

/** The formula of a limit's room, which own cells may use. */
export function roomFormula(limit: LimitCell): string {
  const { result, low, high, applies } = limit;
  const distance =
    low !== undefined && high !== undefined
      ? `ROOM_BETWEEN(${result},${boundText(low)},${boundText(high)})`
      : low !== undefined
        ? `ROOM_ABOVE(${result},${boundText(low)})`
        : `ROOM_BELOW(${result},${boundText(high ?? 0)})`;
  const missing = reasonFormula(`${labelOf(result)} is not above 0, so its limit has no room.`).slice(1);
  const room = limit.must_exist === true ? `IF(${result}>0,${distance},${missing})` : distance;
  if (applies === undefined) return `=${room}`;
  const condition = typeof applies === 'string' ? applies : `NOT(${applies.not})`;
  const none = reasonFormula(`The limit on ${result} does not apply here, so it has no room.`).slice(1);
  return `=IF(${condition},${room},${none})`;
}

/** Formulas read before, by what holds them: only the names must be looked up again. */
const readBefore = new WeakMap<OwnCell | Reading, Formula>();

function readAgain(holder: OwnCell | Reading, text: string, plan: Plan): Formula | { why: string } {
  const known = readBefore.get(holder);
  if (known !== undefined && [...known.names].every((name) => isCellName(name, plan))) return known;
  const read = readFormula(text, (name) => isCellName(name, plan));
  if (!('why' in read)) readBefore.set(holder, read);
  return read;
}

/** A formula's content for the engine; one that cannot be read becomes its own reason. */
function formulaContent(
  holder: OwnCell | Reading,
  text: string,
  plan: Plan,
  rooms: Set<string>,
): { formula: string } {
  const read = readAgain(holder, text, plan);
  if ('why' in read) return { formula: reasonFormula(read.why) };
  for (const name of read.names) if (name.endsWith(ROOM) && cellNamed(name) === undefined) rooms.add(name);
  return { formula: read.text };
}

const knownResults: ReadonlyMap<string, Content> = new Map(
  results.map((cell) => {
    const read = readFormula(cell.formula, (name) => cellNamed(name) !== undefined);
    if ('why' in read) throw new Error(`${cell.name}: ${read.why}`);
    return [cell.name, { formula: read.text }];
  }),
);

/** What every cell of the workbook holds for a plan in one of its scenarios, in the workbook's order. */
export function contentsOf(plan: Plan, scenario: string | null): Map<string, Content> {
  const contents = new Map<string, Content>();
  const rooms = new Set<string>();
  for (const cell of inputs) {
    const reading = readingOf(plan, cell.name, scenario);
    contents.set(
      cell.name,
      reading?.formula === undefined
        ? (reading?.value ?? null)
        : formulaContent(reading, reading.formula, plan, rooms),
    );
  }
  for (const [name, content] of knownResults) contents.set(name, content);
  for (const cell of plan.ownCells) {
    contents.set(
      cell.name,
      cell.formula === undefined ? cell.value : formulaContent(cell, cell.formula, plan, rooms),
    );
  }
  for (const limit of limitCells) {
    const name = `${limit.name}${ROOM}`;
    if (rooms.has(name)) contents.set(name, { formula: roomFormula(limit) });
  }
  return contents;
}

/** What a cell is called in a sentence. */
export const labelOf = (name: string): string => cellNamed(name)?.label ?? name;

/** Why a cell that gives a text has no number. */
export const textSentence = (name: string, text: string): string =>
  `${labelOf(name)} gives a text, “${text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text}”, and no number.`;
