import type { InputCell } from '../../plan/template.ts';
import type { Answers } from './questions.ts';

const UNDER_WATER = new Set([
  'main_rudder_head',
  'main_rudder_foot',
  'rudder_overhang',
  'rudder_overhang_foot',
]);

/** What to mind for one reading where the boat lies, as whole sentences. Common practice, no source. */
export function hintsFor(cell: InputCell, { lying, lean }: Answers): readonly string[] {
  const hints: string[] = [];
  if (cell.name === 'transom_rake' && lean === 'upright') {
    hints.push('You said the transom stands upright: 0 is filled in. Hold the level to it all the same.');
  }
  if (lying === 'ashore' && cell.tool === 'level') {
    hints.push(
      'Ashore the boat seldom lies as it sails. Read the slope of the waterline mark too, along the hull, and take it off.',
      'It counts as further off than a reading afloat, until you take that.',
    );
  }
  if (lying === 'ashore' && cell.tool === 'waterline mark') {
    hints.push(
      'Measure from the mark the water has left on the hull with the boat loaded. It counts as further off than a reading afloat.',
    );
  }
  if (lying === 'afloat' && UNDER_WATER.has(cell.name)) {
    hints.push(
      'Afloat this is mostly under water. Take the stand-in now and read it when the boat is next ashore.',
    );
  }
  if (lying === 'afloat' && !UNDER_WATER.has(cell.name) && cell.where === 'reading' && cell.tool !== 'none') {
    hints.push('You work over water: have a second person there, and a line on every tool.');
  }
  if (lying === 'ashore' && UNDER_WATER.has(cell.name)) {
    hints.push('Keep clear of a boat that is not chocked, and let nobody turn the helm while you measure.');
  }
  return hints;
}
