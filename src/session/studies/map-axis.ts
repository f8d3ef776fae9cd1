import type { Value } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import type { MapAxis } from '../../studies/map/axis.ts';

/** Grain of a length, mm; any other measure is set to its step. */
const LENGTH_GRAIN = 1;

/** One side of the map: the input's usual range, and where it stands. */
export function axisOf(cell: InputCell, present: Value): MapAxis {
  const [low, high] = cell.usual ?? [0, 1];
  return {
    input: cell.name,
    low,
    high,
    present: typeof present === 'number' ? present : null,
    whole: cell.type === 'whole',
    only: cell.only,
    grain: cell.unit === 'mm' ? Math.min(LENGTH_GRAIN, cell.step ?? LENGTH_GRAIN) : (cell.step ?? 1),
  };
}
