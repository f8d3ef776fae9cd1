import { sideView } from '../../drawings/side/side-view.ts';
import { boundWords, limitTitle, roomWords, valueWords } from '../../workbook/limit-words.ts';
import { drawing, ratioWords } from '../page/drawing.ts';
import { Flow } from '../page/flow.ts';
import type { Printout } from '../page/printout.ts';
import { scaleBars } from '../page/scale-bars.ts';
import type { Row } from '../page/table.ts';
import { limitsOf, printoutFor, type SheetInput, valuesOf } from '../sheet-input.ts';

/** The sheet for the day of the work. */
export function jobSheet(input: SheetInput): Printout {
  const printout = printoutFor(input, 'job sheet');
  const flow = new Flow(printout);
  flow.title('Job sheet');
  flow.place(150, (sheet, x, y, width) => {
    const { ratio } = drawing(
      sheet,
      sideView(valuesOf(input), { unit: input.units, limits: limitsOf(input) }),
      {
        x,
        y,
        width,
        height: 148,
      },
    );
    sheet.scale = ratioWords(ratio);
  });
  flow.place(18, (sheet, x, y) => scaleBars(sheet, x, y));
  flow.section('Limits');
  flow.table(
    [
      { head: 'Limit', share: 2 },
      { head: 'State', width: 36 },
      { head: 'Value', width: 22, align: 'right', style: 'value' },
      { head: 'Room', width: 26, align: 'right' },
      { head: 'Bound', share: 1 },
    ],
    input.judgement.limits
      .filter((it) => it.verdict.state !== 'does not apply')
      .map(
        (it): Row => ({
          cells: [
            limitTitle(it),
            {
              mark: {
                state: it.verdict.state,
                value: it.value ?? null,
                low: it.low ?? null,
                high: it.high ?? null,
                roomRatio: it.verdict.ratio ?? null,
              },
            },
            valueWords(it, input.units),
            roomWords(it, input.units),
            boundWords(it, input.units),
          ],
        }),
      ),
  );
  return printout.finish();
}
