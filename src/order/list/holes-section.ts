import { type Cautions, holeCautions, stopWords } from '../cautions.ts';
import { drillNotes } from '../drill.ts';
import { holesOf } from '../holes.ts';
import type { OrderGiven, OrderSection } from '../section.ts';
import { underHoles } from '../under-holes.ts';
import { markWords, together } from '../words.ts';

export function holesSection(given: OrderGiven, cautions: Cautions): OrderSection {
  const stop = stopWords(cautions, 'list');
  const { holes, unanswered, notes } = holesOf(given.ask, given.units, given.profile);
  const mark = (it: Parameters<typeof markWords>[0]) => markWords(it, given.units);
  return {
    title: 'Holes through the transom',
    lead: 'From the centreline, and from the waterline mark; on the outside. In brackets, what the rounding adds in mm.',
    tables: [
      {
        heads: [
          { text: 'No.', figure: true, share: 0.3 },
          { text: 'Hole', share: 1.3 },
          { text: 'Side', share: 0.8 },
          { text: 'Centreline, straight across' },
          { text: 'Centreline, tape along the face' },
          { text: 'Mark, plumb up' },
          { text: 'Mark, tape up the face' },
        ],
        rows: holes.map((it) => [
          String(it.number),
          it.name,
          together(it.side),
          mark(it.across),
          mark(it.acrossFace),
          mark(it.height),
          mark(it.upFace),
        ]),
      },
    ],
    ...(stop === undefined ? {} : { stop }),
    notes: [...holeCautions(cautions), ...notes, ...drillNotes(given.ask)],
    unanswered,
    restsOn: underHoles(given.ask),
  };
}
