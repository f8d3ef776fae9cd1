import { boltSizeWords, inchBoltWords, nutWords } from '../bolt-words.ts';
import { type BoltOrder, boltOrder } from '../bolts.ts';
import { feetInUse, type Place } from '../feet.ts';
import type { OrderGiven, OrderSection } from '../section.ts';
import { byParts, counted, length, together } from '../words.ts';

function lengthNotes(it: BoltOrder, name: string): string[] {
  if (it.rod !== undefined)
    return [
      `${name}: no standard bolt is long enough. Cut ${counted(it.count, 'piece')} of M${it.diameter} threaded rod to ${it.rod} mm, with a nut and a thin nut at each end.`,
    ];
  const notes: string[] = [];
  if (it.usual === 'long')
    notes.push(
      `${name}: ${it.length} mm is longer than ISO 4014 bolts of M${it.diameter} usually come. Ask before you count on it, or take threaded rod cut to length.`,
    );
  if (it.usual === 'full thread')
    notes.push(`${name}: at ${it.length} mm the bolt comes threaded to the head, ISO 4017.`);
  if (it.usual === 'short')
    notes.push(`${name}: ${it.length} mm is shorter than bolts of M${it.diameter} usually come.`);
  if (it.usual !== 'full thread' && it.threadReaches === false)
    notes.push(
      `${name}: the plain shank of an ISO 4014 bolt would stand past the washer, and the nut would not close. Take one threaded to the head.`,
    );
  return notes;
}

function inchNote(it: BoltOrder): string {
  const percent = Math.round(Math.abs(it.inchShare - 1) * 100);
  const more = percent === 0 ? 'as much as' : `${percent} % ${it.inchShare < 1 ? 'less' : 'more'} than`;
  return `Where only inch sizes are sold, ${it.inch.name} coarse is nearest to M${it.diameter}: its thread carries ${more} that of M${it.diameter}, steel for steel. Never mix inch and metric on one bolt.`;
}

/** Bolts, nuts and washers by place. */
export function boltsSection(given: OrderGiven): OrderSection {
  const places: readonly Place[] = ['lower', ...feetInUse(given.ask)];
  const found = places.map((place) => boltOrder(given.ask, place));
  const bolts = found.filter((it) => typeof it !== 'string');
  const sum = (of: (it: BoltOrder) => number): number => bolts.reduce((all, it) => all + of(it), 0);
  const tapers = sum((it) => it.taperWashers);
  const [first] = bolts;
  // The feet are alike, so what is said of one holds for the other.
  const feet = bolts.filter((it) => it.place !== 'lower');
  return {
    title: 'Through bolts',
    lead: 'Stainless, one grade throughout: A4-70 of ISO 3506-1 or what the gear’s manual names. A washer under every head and every nut.',
    tables: [
      {
        heads: [
          { text: 'Place', share: 1.1 },
          { text: 'Bolts', figure: true, share: 0.4 },
          { text: 'Size', share: 0.9 },
          { text: 'Grip', figure: true, share: 1.35 },
          { text: 'Thread past the nut', figure: true, share: 1.2 },
          { text: 'Washers', figure: true, share: 0.6 },
          { text: 'Nuts', share: 1.05 },
          { text: 'In inch sizes', share: 1.15 },
        ],
        rows: bolts.map((it) => [
          it.name,
          String(it.count),
          byParts(boltSizeWords(it)),
          byParts(length(it.grip, given.units)),
          it.beyond === undefined ? '' : byParts(length(it.beyond, given.units)),
          String(it.washers),
          together(nutWords(it)),
          together(inchBoltWords(it)),
        ]),
      },
    ],
    notes: [
      ...(bolts.length > 0
        ? [
            `In all: ${counted(
              sum((it) => it.count),
              'bolt',
            )}, ${counted(
              sum((it) => it.washers),
              'washer',
            )}, ${counted(
              sum((it) => it.nuts),
              'nut',
            )}. Buy a spare of each.`,
          ]
        : []),
      ...bolts.filter((it) => it.place === 'lower').flatMap((it) => lengthNotes(it, it.name)),
      ...feet.slice(0, 1).flatMap((it) => lengthNotes(it, feet.length > 1 ? 'Each foot' : it.name)),
      ...(tapers > 0 && first !== undefined
        ? [
            `Taper washers: ${tapers}, ground to ${first.taper.toFixed(1)}°, one under each head at the lower bracket, where the wedge leaves flange and bolt out of square.`,
          ]
        : []),
      ...(first === undefined ? [] : [inchNote(first)]),
    ],
    unanswered: found.filter((it) => typeof it === 'string'),
    restsOn: [
      ...[
        'bolt_diameter',
        'flange_thickness',
        'transom_thickness',
        'bed_thickness',
        'plate_thickness',
        'foot_pad',
      ],
      ...['shim_count', 'shim_thickness', 'wedge_edge', 'foot_bolt_count'],
    ],
  };
}
