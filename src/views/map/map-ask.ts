import { inputNamed, inputs, resultNamed } from '../../plan/book.ts';
import { type Plan, readingOf, type StudySettings } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { ownVaried, variedCell } from '../../session/studies/varied-cell.ts';

/** What the map is asked, before its ranges are looked up. */
export interface MapChoice {
  readonly x: InputCell;
  readonly y: InputCell;
  /** The result whose contours are drawn. */
  readonly result: string;
}

const isMappable = (cell: InputCell): boolean =>
  (cell.type === 'number' || cell.type === 'whole') && cell.usual !== undefined;

/** What may be a side of the map: inputs with a range, then the owner's own cells that hold a plain number. */
export const mapInputs = (plan: Pick<Plan, 'ownCells'>): readonly InputCell[] => [
  ...inputs.filter(isMappable),
  ...ownVaried(plan),
];

type Own = Pick<Plan, 'ownCells'>;

const cellOf = (name: unknown, otherwise: string, plan: Own): InputCell =>
  (typeof name === 'string' ? variedCell(name, plan) : undefined) ?? (inputNamed(otherwise) as InputCell);

/** The settings that the plan keeps, with what is looked at when there are none. */
export function choiceOf(
  { across, up, lines }: StudySettings['settings'],
  worst: string,
  plan: Own,
): MapChoice {
  const x = cellOf(across, 'shim_count', plan);
  const y = cellOf(up, 'upper_bracket_height', plan);
  const isThere =
    typeof lines === 'string' &&
    (resultNamed(lines) !== undefined || plan.ownCells.some((it) => it.name === lines));
  const result = isThere ? lines : worst;
  // A file may name one input for both sides.
  return {
    x,
    y:
      x.name === y.name
        ? cellOf(x.name === 'shim_count' ? undefined : 'shim_count', 'upper_bracket_height', plan)
        : y,
    result,
  };
}

/** A place on the map, in base units. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A scenario's place on the map. */
export interface NamedPlace extends Spot {
  readonly name: string;
}

/** Where the other scenarios stand on the two inputs; one that follows a formula there has no place of its own. */
export function scenarioPlaces(plan: Plan, { x, y }: MapChoice): readonly NamedPlace[] {
  return plan.scenarios.flatMap(({ name }): NamedPlace[] => {
    const [a, b] = [readingOf(plan, x.name, name), readingOf(plan, y.name, name)];
    if (name === plan.active || a?.formula !== undefined || b?.formula !== undefined) return [];
    return typeof a?.value === 'number' && typeof b?.value === 'number'
      ? [{ name, x: a.value, y: b.value }]
      : [];
  });
}
