import { boltShelf } from '../../calc/fasteners/iso-bolts.ts';
import { nearestUnc } from '../../calc/fasteners/unc.ts';
import { numberOf } from '../ask.ts';
import { holesOf } from '../holes.ts';
import type { OrderGiven, OrderSection } from '../section.ts';
import { underHoles } from '../under-holes.ts';
import { markWords, together } from './words.ts';

function drillNote({ ask, units }: OrderGiven): readonly string[] {
  const diameter = numberOf(ask, 'bolt_diameter');
  const shelf = diameter === undefined ? undefined : boltShelf(diameter);
  if (diameter === undefined || shelf === undefined) return [];
  const inch = nearestUnc(diameter);
  const final =
    units === 'in' ? `${inch.hole} in for a ${inch.name} bolt` : `${shelf.hole} mm for M${diameter}`;
  const other = units === 'both' ? `, or ${inch.hole} in where ${inch.name} bolts are bought instead` : '';
  return [
    `Drills: a pilot of 4 mm (5⁄32 in; common practice, no source), then ${final}${other} (close holes of ISO 273 and ASME B18.2.8, from memory).`,
    'Drill the pilot from outside, square to the face, and look inside before you open it up. Break the outer edge so that sealant stays round the bolt.',
  ];
}

export function holesSection(given: OrderGiven): OrderSection {
  const { holes, unanswered, notes } = holesOf(given.ask, given.profile);
  const mark = (it: Parameters<typeof markWords>[0]) => markWords(it, given.units);
  return {
    title: 'Holes through the transom',
    lead: 'From the centreline, and from the waterline mark; on the outside. In brackets, what the rounding adds in mm.',
    tables: [
      {
        heads: [
          { text: 'Hole', share: 1.3 },
          { text: 'Side', share: 0.8 },
          { text: 'Centreline, straight across' },
          { text: 'Centreline, tape along the face' },
          { text: 'Mark, plumb up' },
          { text: 'Mark, tape up the face' },
        ],
        rows: holes.map((it) => [
          it.name,
          together(it.side),
          mark(it.across),
          mark(it.acrossFace),
          mark(it.height),
          mark(it.upFace),
        ]),
      },
    ],
    notes: [...notes, ...drillNote(given)],
    unanswered,
    restsOn: underHoles(given.ask),
  };
}
