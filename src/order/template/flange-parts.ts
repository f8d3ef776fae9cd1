import { cos, tan } from '../../calc/angle.ts';
import { type Ask, numberOf, numbersOf } from '../ask.ts';
import { flangeOf } from '../bolt-pattern.ts';
import { drillOf } from '../drill.ts';
import { feetInUse, type Place } from '../feet.ts';
import { missingSentence } from '../missing.ts';
import { hollowWords, NO_PAD, needsPad, padOrder, shimOrder, wedgeOrder, wedgeWords } from '../packing.ts';
import { plateOrder } from '../plates.ts';
import type { OrderGiven } from '../section.ts';
import { length } from '../words.ts';
import { slab, type TemplatePart } from './part.ts';

/** Outline and holes of one flange, with lines through its middle. */
function flangePart(
  ask: Ask,
  place: Place,
  names: Pick<TemplatePart, 'id' | 'title' | 'says' | 'count' | 'thick'>,
): TemplatePart | string {
  const it = flangeOf(ask, place);
  const diameter = drillOf(ask)?.hole;
  const what = `the template “${names.title}”`;
  if ('missing' in it) return missingSentence(what, it.missing);
  if (diameter === undefined) return missingSentence(what, ['bolt_diameter']);
  const { width, height, bolts } = it;
  const misses = bolts.some(
    ({ across, raised }) => Math.abs(across) >= width / 2 || Math.abs(raised) >= height / 2,
  );
  return {
    ...names,
    says: misses ? `${names.says} Its bolts would miss it: measure both again on the gear.` : names.says,
    outlines: [slab(width, height)],
    holes: bolts.map(({ across, raised }) => ({ x: across, y: raised, diameter })),
    lines: [
      [
        { x: -width / 2, y: 0 },
        { x: width / 2, y: 0 },
      ],
      [
        { x: 0, y: -height / 2 },
        { x: 0, y: height / 2 },
      ],
    ],
    words: [{ x: 2, y: height / 2 - 6, text: 'up' }],
  };
}

export function shimPart({ ask, units }: OrderGiven): TemplatePart | string | undefined {
  const it = shimOrder(ask);
  if (typeof it === 'string') return it;
  const { count, thick, hollow } = it;
  if (count === 0) return undefined;
  return flangePart(ask, 'lower', {
    id: 'shim',
    title: 'Shim',
    thick: length(thick, units),
    says: `Cut ${count} from sheet ${length(thick, units)} thick. ${hollowWords(hollow, units)}`.trimEnd(),
    count,
  });
}

/** The wedge: its face against the flange, and its section seen from port, aft at the right. */
export function wedgeParts({ ask, units }: OrderGiven): readonly (TemplatePart | string)[] {
  const wedge = wedgeOrder(ask);
  if (wedge === undefined) return [];
  if (typeof wedge === 'string') return [wedge];
  const it = numbersOf(ask, ...(['lower_flange_height', 'shaft_lean'] as const));
  if ('missing' in it) return [missingSentence('the template “Wedge”', it.missing)];
  const [height, lean] = it.got;
  const { thin, thick, isThinAbove } = wedge;
  const rise = (height / 2) * cos(lean);
  const run = rise * tan(lean);
  const [above, below] = isThinAbove ? [thin, thick] : [thick, thin];
  const section: TemplatePart = {
    id: 'wedge-section',
    title: 'Wedge, section',
    says: `Seen from port, aft at the right: this is the shape of the wedge’s two sides, ${wedgeWords(wedge, units)}.`,
    count: 1,
    outlines: [
      [
        { x: -run, y: -rise },
        { x: run, y: rise },
        { x: run - above, y: rise },
        { x: -run - below, y: -rise },
      ],
    ],
    holes: [],
    lines: [],
    words: [],
  };
  return [
    flangePart(ask, 'lower', {
      id: 'wedge-face',
      title: 'Wedge, face',
      says: 'The face against the flange. Drill square to the other face, which lies against the packing.',
      count: 1,
    }),
    section,
  ];
}

export function footPart({ ask, units }: OrderGiven): TemplatePart | string | undefined {
  const [side] = feetInUse(ask);
  if (side === undefined) return missingSentence('the template “Foot”', ['strut_count']);
  const pads = feetInUse(ask).map((it) => padOrder(ask, it));
  const thick = numberOf(ask, 'foot_pad') ?? 0;
  const lacking =
    thick === 0 && pads.some((it) => typeof it !== 'string' && needsPad(it)) ? ` ${NO_PAD}` : '';
  return flangePart(ask, side, {
    id: 'foot',
    title: thick > 0 ? 'Foot, and its pad' : 'Foot',
    says:
      thick > 0
        ? `The outline of a foot as it is mounted. Cut ${pads.length} from sheet ${length(thick, units)} thick.`
        : `The outline of a foot as it is mounted: lay it on the marks to see what is in its way.${lacking}`,
    ...(thick > 0 ? { thick: length(thick, units) } : {}),
    count: thick > 0 ? pads.length : 0,
  });
}

/** Backing plates of one kind, with the bolts spread as on the flange. */
export function platePart(
  { ask, units }: OrderGiven,
  place: Place,
  id: string,
  title: string,
): TemplatePart | string {
  const it = plateOrder(ask, place);
  const flange = flangeOf(ask, place);
  const diameter = drillOf(ask)?.hole;
  if (typeof it === 'string') return it;
  if ('missing' in flange || diameter === undefined)
    return missingSentence(
      `the template “${title}”`,
      'missing' in flange ? flange.missing : ['bolt_diameter'],
    );
  const feet = place === 'lower' ? 1 : feetInUse(ask).length;
  const mine = flange.bolts.filter(
    (bolt) => (it.wide || bolt.column === 'port') && (it.tall || bolt.row === 1),
  );
  const middle = {
    x: mine.reduce((sum, bolt) => sum + bolt.across, 0) / mine.length,
    y: mine.reduce((sum, bolt) => sum + bolt.raised, 0) / mine.length,
  };
  return {
    id,
    title,
    says: `Cut ${it.count * feet} from plate ${length(it.thickness, units)} thick, and round the corners.`,
    count: it.count * feet,
    thick: length(it.thickness, units),
    outlines: [slab(it.width, it.height)],
    holes: mine.map(({ across, raised }) => ({ x: across - middle.x, y: raised - middle.y, diameter })),
    lines: [],
    words: [],
  };
}
