import { standIn } from '../../plan/new-plan.ts';
import type { Reading } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Answers } from './questions.ts';

const SIDE = { aft: 1, upright: 0, forward: -1 } as const;

/** The stand-in of a first reading. The slope's leans the way the transom was said to lean. */
export function standInFor(cell: InputCell, { lean }: Answers): Reading {
  const reading = standIn(cell);
  if (cell.name !== 'transom_rake' || lean === undefined || typeof reading.value !== 'number') return reading;
  const size = Math.abs(reading.value);
  return { ...reading, value: SIDE[lean] === 0 ? 0 : SIDE[lean] * size };
}
