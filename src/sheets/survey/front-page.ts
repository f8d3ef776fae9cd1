import { type Numbers, sideOverview, sternOverview } from '../../drawings/survey/overviews.ts';
import { drawing } from '../page/drawing.ts';
import type { Flow } from '../page/flow.ts';
import { WHO, who } from '../page/who.ts';

const BRING =
  'A tape. A level that shows degrees. A plumb bob on 3 m of line, and a bucket of water to still it. A straight batten as long as the transom is wide. A caliper. Masking tape and a pencil. The gear’s manual, or the gear itself.';

const RULES: readonly string[] = [
  'Load the boat as it sails, with crew, water and fuel. Mark where the water stands on the transom, on the centreline. Every height starts at that mark: plus is up, minus is under water.',
  'Distances fore and aft start at that mark too: plus is aft, minus is forward. Distances to the side start at the boat’s centreline: plus is to starboard, minus to port.',
  'Beside each value write ±: the most by which your reading may be off. Measure twice; half the difference is the least it can be. Leave it empty to take the figure that is printed there.',
  'Take angles and heights as the boat lies. What list and trim make of them is taken out again, from the readings under “How the boat lies while you measure”.',
  'Plumb is straight up and down, as a bob hangs; level, as water lies; athwart, across the boat. List is its leaning to one side, trim its lying deeper at one end. Helm amidships: the rudder straight ahead; hard over: as far as it goes.',
  'What you cannot reach or find, leave empty. A stand-in takes its place, and every sheet then says so.',
  'Ashore, keep clear of a boat that is not chocked. Afloat, work from a dinghy made fast fore and aft, with a second person. Drill nothing to find a thickness.',
];

/** First page: who, how to read, and where each reading is taken. */
export function frontPage(flow: Flow, numbers: Numbers): void {
  flow.title('Survey form');
  flow.place(WHO + 2, who);
  flow.text(`Bring: ${BRING}`);
  for (const rule of RULES) flow.text(rule);
  flow.section('Where each reading is taken', 60);
  flow.text(
    'The numbers are those of the readings on the pages that follow. From the side, bow to the left; and from astern.',
    'small',
  );
  flow.place(flow.left - 1, (sheet, x, y, width) => {
    const height = sheet.bottom - y - 1;
    drawing(sheet, sideOverview(numbers), { x, y, width: width * 0.52, height }, []);
    drawing(
      sheet,
      sternOverview(numbers),
      { x: x + width * 0.54, y, width: width * 0.46, height: height * 0.8 },
      [],
    );
  });
}
