import { inputNamed, inputs } from '../../plan/book.ts';
import { type Plan, readingOf, type Value } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { BOUNDS } from '../remedy-ask.ts';

/** Something that a search for proposals may be allowed to move: one choice, or two that mirror each other. */
export interface FreeChoice {
  readonly name: string;
  readonly label: string;
  readonly moves: readonly { readonly input: string; readonly sign: 1 | -1 }[];
  /** The input whose range and step it has. */
  readonly cell: InputCell;
}

const single = (cell: InputCell): FreeChoice => ({
  name: cell.name,
  label: cell.label,
  moves: [{ input: cell.name, sign: 1 }],
  cell,
});

const together = (
  name: string,
  label: string,
  port: string,
  starboard: string,
  sign: 1 | -1,
): FreeChoice => ({
  name,
  label,
  moves: [
    { input: starboard, sign: 1 },
    { input: port, sign },
  ],
  cell: inputNamed(starboard) as InputCell,
});

const PAIRS: readonly FreeChoice[] = [
  together('feet_height', 'Both feet, height', 'port_foot_height', 'starboard_foot_height', 1),
  together('feet_aside', 'Both feet, from the centreline', 'port_foot_y', 'starboard_foot_y', -1),
];

const PAIRED = new Set(PAIRS.flatMap((it) => it.moves.map((move) => move.input)));

const isChoice = ({ kind, type, usual, name }: InputCell): boolean =>
  kind === 'choice' && (type === 'number' || type === 'whole') && usual !== undefined && !BOUNDS.has(name);

/** Everything that may be freed; feet move together first, each by itself last. */
export const freeChoices: readonly FreeChoice[] = [
  ...inputs.filter((cell) => isChoice(cell) && !PAIRED.has(cell.name)).map(single),
  ...PAIRS,
  ...inputs.filter((cell) => isChoice(cell) && PAIRED.has(cell.name)).map(single),
];

/** Why a choice stays where it is; undefined when it may be freed. */
export function heldBy(plan: Plan, { moves }: FreeChoice): 'drilled' | 'follows a formula' | undefined {
  if (moves.some(({ input }) => plan.locked.has(input))) return 'drilled';
  return moves.some(({ input }) => readingOf(plan, input)?.formula !== undefined)
    ? 'follows a formula'
    : undefined;
}

const USUAL = ['shim_count', 'upper_bracket_height', 'lower_bracket_height', 'shaft_foot_height'];

/** What is freed when the owner has not said. */
export const usuallyFreed = (struts: Value): readonly string[] =>
  struts === 1 ? [...USUAL, 'single_foot_height'] : [...USUAL, 'feet_height', 'feet_aside'];

/** The choices that are freed: those named that may be, no input twice. */
export function freedAmong(plan: Plan, names: readonly string[]): readonly FreeChoice[] {
  const moved = new Set<string>();
  return freeChoices.filter((it) => {
    const isFree = names.includes(it.name) && heldBy(plan, it) === undefined;
    if (!isFree || it.moves.some(({ input }) => moved.has(input))) return false;
    for (const { input } of it.moves) moved.add(input);
    return true;
  });
}
