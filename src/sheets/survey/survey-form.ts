import { Flow } from '../page/flow.ts';
import type { Printout } from '../page/printout.ts';
import { printoutFor, type SheetInput } from '../sheet-input.ts';

/** The blank form to take to the boat. */
export function surveyForm(input: SheetInput): Printout {
  const printout = printoutFor(input, 'survey form');
  const flow = new Flow(printout);
  flow.title('Survey form');
  flow.text('Measure afloat and level if you can, loaded as the boat sails.');
  return printout.finish();
}
