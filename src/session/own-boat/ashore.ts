import type { Reading } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Answers } from './questions.ts';

/** How far a slope read with a level may be off ashore, degrees. Assumed: a cradle seldom holds the sailing trim. */
const SLOPE_OFF_BY = 1;

/** How far a height may be off when the waterline is a mark on the hull, mm. Assumed: twice what it is afloat. */
const MARK_OFF_BY = 20;

const offByAshore = (cell: InputCell): number | undefined => {
  if (cell.tool === 'level') return SLOPE_OFF_BY;
  return cell.tool === 'waterline mark' ? MARK_OFF_BY : undefined;
};

/** How far a reading may be off, where the boat lies, in the input's base unit. */
export const offByOf = (cell: InputCell, lying: Answers['lying']): number =>
  (lying === 'ashore' ? offByAshore(cell) : undefined) ?? cell.off_by;

/** The reading with what lying ashore does to it. */
export function asRead(reading: Reading, cell: InputCell, lying: Answers['lying']): Reading {
  if (lying !== 'ashore' || offByAshore(cell) === undefined) return reading;
  return { ...reading, offBy: offByOf(cell, lying), note: 'Read ashore; how far it may be off is assumed.' };
}
