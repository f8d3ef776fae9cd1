import { cos, tan } from '../../calc/angle.ts';
import { boltShelf } from '../../calc/fasteners/iso-bolts.ts';
import { type Ask, numberOf, numbersOf } from '../ask.ts';
import { flangeOf } from '../bolt-pattern.ts';
import { feetInUse, type Place } from '../feet.ts';
import { missingSentence } from '../missing.ts';
import { plateOrder } from '../plates.ts';
import { slab, type TemplatePart } from './part.ts';

/** The hole drilled for the plan's bolts, mm; the bolt itself where the tables have none. */
export function holeDiameter(ask: Ask): number | undefined {
  const diameter = numberOf(ask, 'bolt_diameter');
  return diameter === undefined ? undefined : (boltShelf(diameter)?.hole ?? diameter);
}

/** Outline and holes of one flange, with lines through its middle. */
function flangePart(
  ask: Ask,
  place: Place,
  names: Pick<TemplatePart, 'id' | 'title' | 'says' | 'count'>,
): TemplatePart | string {
  const it = flangeOf(ask, place);
  const diameter = holeDiameter(ask);
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

export function shimPart(ask: Ask): TemplatePart | string | undefined {
  const it = numbersOf(ask, 'shim_count', 'shim_thickness');
  if ('missing' in it) return missingSentence('the template “Shim”', it.missing);
  const [count, thick] = it.got;
  if (count === 0) return undefined;
  return flangePart(ask, 'lower', {
    id: 'shim',
    title: 'Shim',
    says: `Cut ${count} from sheet ${thick} mm thick.`,
    count,
  });
}

/** The wedge: its face against the flange, and its section seen from port, aft at the right. */
export function wedgeParts(ask: Ask): readonly (TemplatePart | string)[] {
  if (ask('lower_flange_hinged') !== false) return [];
  const it = numbersOf(
    ask,
    ...(['wedge_edge', 'wedge_thick_edge', 'lower_flange_height', 'shaft_lean', 'transom_slope'] as const),
  );
  if ('missing' in it) return [missingSentence('the template “Wedge”', it.missing)];
  const [edge, thick, height, lean, slope] = it.got;
  const isThinAbove = slope > lean;
  const rise = (height / 2) * cos(lean);
  const run = rise * tan(lean);
  const [above, below] = isThinAbove ? [edge, thick] : [thick, edge];
  const section: TemplatePart = {
    id: 'wedge-section',
    title: 'Wedge, section',
    says: 'Seen from port, aft at the right: this is the shape of the wedge’s two sides.',
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

export function footPart(ask: Ask): TemplatePart | string | undefined {
  const [side] = feetInUse(ask);
  if (side === undefined) return missingSentence('the template “Foot”', ['strut_count']);
  const pad = numberOf(ask, 'foot_pad') ?? 0;
  const count = feetInUse(ask).length;
  return flangePart(ask, side, {
    id: 'foot',
    title: pad > 0 ? 'Foot, and its pad' : 'Foot',
    says:
      pad > 0
        ? `The outline of a foot as it is mounted. Cut ${count} from sheet ${pad} mm thick.`
        : 'The outline of a foot as it is mounted: lay it on the marks to see what is in its way.',
    count: pad > 0 ? count : 0,
  });
}

/** Backing plates of one kind, with the bolts spread as on the flange. */
export function platePart(ask: Ask, place: Place, id: string, title: string): TemplatePart | string {
  const it = plateOrder(ask, place);
  const flange = flangeOf(ask, place);
  const diameter = holeDiameter(ask);
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
    says: `Cut ${it.count * feet} from plate ${it.thickness} mm thick, and round the corners.`,
    count: it.count * feet,
    outlines: [slab(it.width, it.height)],
    holes: mine.map(({ across, raised }) => ({ x: across - middle.x, y: raised - middle.y, diameter })),
    lines: [],
    words: [],
  };
}
