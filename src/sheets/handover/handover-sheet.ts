import { handoverLines } from '../../fitting/handover.ts';
import { orderOfWork } from '../../fitting/order-of-work.ts';
import { Flow } from '../page/flow.ts';
import type { Printout } from '../page/printout.ts';
import { printoutFor, type SheetInput } from '../sheet-input.ts';

/** What was fitted, by whom and when, and what remains to be looked at. */
export function handoverSheet(input: SheetInput): Printout {
  const { plan, scenario, units, answer } = input;
  const printout = printoutFor(input, 'handover record');
  const flow = new Flow(printout);
  const planned = (name: string) => answer(name).value;
  const [title = '', ...lines] = handoverLines({
    plan: { ...plan, active: scenario },
    units,
    steps: orderOfWork({ ask: planned, units }),
    planned,
  });
  flow.title(title);
  for (const line of lines) {
    if (line === '') continue;
    if (line.endsWith(':')) flow.section(line.slice(0, -1));
    else flow.text(line);
  }
  return printout.finish();
}
