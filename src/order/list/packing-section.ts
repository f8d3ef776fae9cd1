import { numberOf } from '../ask.ts';
import { flangeOf } from '../bolt-pattern.ts';
import { feetInUse } from '../feet.ts';
import {
  hollowWords,
  NO_PAD,
  needsPad,
  padCount,
  padOrder,
  padWords,
  shimOrder,
  wedgeOrder,
  wedgeWords,
} from '../packing.ts';
import type { OrderGiven, OrderSection } from '../section.ts';
import { counted, length } from '../words.ts';

const area = (mm2: number): string => `${(mm2 / 100).toFixed(0)} cm²`;

type Line = readonly [string, string, string];

function shimLines({ ask, units }: OrderGiven, unanswered: string[], notes: string[]): Line[] {
  const it = shimOrder(ask);
  if (typeof it === 'string') {
    unanswered.push(it);
    return [];
  }
  const { count, thick, width, height, spacing, stack, sheet, hollow } = it;
  const diameter = numberOf(ask, 'bolt_diameter');
  const l = (mm: number): string => length(mm, units);
  if (count > 0) {
    notes.push(
      `Two holes in each shim, level, ${l(spacing)} apart, ${l(spacing / 2)} to each side of its middle. Sheet for all of them with the saw’s cuts: ${area(sheet)}.`,
      'Common practice, no source: polyethylene sheet, HDPE or UHMW. It takes no glue or paint, and loose sheets creep: re-tighten after a day, a week, a month.',
    );
    if (diameter !== undefined && stack > (4 * diameter) / 3 && ask('shim_sleeve') !== true)
      notes.push(
        `The stack of ${l(stack)} is more than four thirds of the bolt’s diameter: order rigid sleeves round the bolts, or one bonded block in place of loose sheets (EN 1993-1-8 3.6.1, for steel packing).`,
      );
  }
  if (hollow > 0) notes.push(hollowWords(hollow, units));
  return [
    count === 0
      ? ['Shims', 'none', 'The flange lies on the transom.']
      : ['Shims', String(count), `${l(width)} wide, ${l(height)} high, ${l(thick)} thick`],
  ];
}

function wedgeLines({ ask, units }: OrderGiven, unanswered: string[]): Line[] {
  const it = wedgeOrder(ask);
  if (it === undefined) return [['Wedge', 'none', 'The flange is hinged and follows the transom.']];
  if (typeof it !== 'string') return [['Wedge', '1', wedgeWords(it, units)]];
  unanswered.push(it);
  return [];
}

/** A pad for each foot: what is ordered, and which way of mounting its flange needs it hollowed. */
function padLines({ ask, units }: OrderGiven, unanswered: string[], notes: string[]): Line[] {
  const pads = feetInUse(ask).map((side) => padOrder(ask, side));
  unanswered.push(...pads.filter((it) => typeof it === 'string'));
  const known = pads.filter((it) => typeof it !== 'string');
  if (known.some((it) => it.thick === 0 && needsPad(it))) notes.push(NO_PAD);
  const ordered = known.filter((it) => it.thick > 0);
  if (ordered[0] !== undefined)
    notes.push(
      `Pads of ${length(ordered[0].thick, units)} under the feet: ${counted(ordered.length, 'pad')} of the foot’s outline.`,
    );
  return known.map((it) => [it.name, padCount(it), padWords(it, units)]);
}

/** A bolt that would miss its own flange says that one of two readings is wrong. */
function flangeNotes({ ask, units }: OrderGiven): string[] {
  const [side] = feetInUse(ask);
  const places = side === undefined ? (['lower'] as const) : (['lower', side] as const);
  return places.flatMap((place) => {
    const it = flangeOf(ask, place);
    if ('missing' in it) return [];
    const spread = 2 * Math.max(...it.bolts.map(({ across }) => across));
    if (spread < it.width) return [];
    const what = place === 'lower' ? 'The lower bracket’s bolts' : 'A foot’s bolts';
    return [
      `${what} are ${length(spread, units)} apart, and the flange is ${length(it.width, units)} wide: they would miss it. Measure both again on the gear before anything is cut or drilled.`,
    ];
  });
}

export function packingSection(given: OrderGiven): OrderSection {
  const unanswered: string[] = [];
  const notes: string[] = [];
  const lines = [
    ...shimLines(given, unanswered, notes),
    ...wedgeLines(given, unanswered),
    ...padLines(given, unanswered, notes),
  ];
  return {
    title: 'Shims, wedge and pads',
    lead: 'True-size templates are on paper, and as files for a shop that cuts sheet.',
    tables: [
      {
        heads: [{ text: 'What' }, { text: 'How many', share: 0.6 }, { text: 'Size', share: 3 }],
        rows: lines,
      },
    ],
    notes: [...flangeNotes(given), ...notes],
    unanswered,
    restsOn: [
      ...[
        'lower_flange_width',
        'lower_flange_height',
        'lower_flange_hinged',
        'lower_bolt_spacing',
        'wedge_edge',
      ],
      ...['shim_count', 'shim_thickness', 'foot_width', 'foot_height', 'foot_pad', 'transom_camber_radius'],
    ],
  };
}
