import { type Ask, numberOf, numbersOf } from '../ask.ts';
import { flangeOf } from '../bolt-pattern.ts';
import { feetInUse, placeWords } from '../feet.ts';
import { missingSentence } from '../missing.ts';
import type { OrderGiven, OrderSection } from '../section.ts';
import { counted, depth, length } from './words.ts';

const area = (mm2: number): string => `${(mm2 / 100).toFixed(0)} cm²`;

type Line = readonly [string, string, string];

function shimLines({ ask, units }: OrderGiven, unanswered: string[], notes: string[]): Line[] {
  const it = numbersOf(
    ask,
    ...(['shim_count', 'shim_thickness', 'lower_flange_width', 'lower_flange_height'] as const),
    ...([
      'lower_bolt_spacing',
      'shim_sheet_area',
      'lower_pad_hollow',
      'shim_stack',
      'bolt_diameter',
    ] as const),
  );
  if ('missing' in it) {
    unanswered.push(missingSentence('the shims', it.missing));
    return [];
  }
  const [count, thick, width, height, spacing, sheet, hollow, stack, diameter] = it.got;
  const l = (mm: number): string => length(mm, units);
  if (count > 0) {
    notes.push(
      `Two holes in each shim, level, ${l(spacing)} apart, ${l(spacing / 2)} to each side of its middle. Sheet for all of them with the saw’s cuts: ${area(sheet)}.`,
      'Common practice, no source: polyethylene sheet, HDPE or UHMW. It takes no glue or paint, and loose sheets creep: re-tighten after a day, a week, a month.',
    );
    if (stack > (4 * diameter) / 3 && ask('shim_sleeve') !== true)
      notes.push(
        `The stack of ${l(stack)} is more than four thirds of the bolt’s diameter: order rigid sleeves round the bolts, or one bonded block in place of loose sheets (EN 1993-1-8 3.6.1, for steel packing).`,
      );
  }
  if (ask('lower_pad_needed') === true)
    notes.push(
      `Hollow the sheet next to the hull by ${depth(hollow, units)} across its width, so that it sits on the curved face.`,
    );
  return [
    count === 0
      ? ['Shims', 'none', 'The flange lies on the transom.']
      : ['Shims', String(count), `${l(width)} wide, ${l(height)} high, ${l(thick)} thick`],
  ];
}

function wedgeLines({ ask, units }: OrderGiven, unanswered: string[]): Line[] {
  if (ask('lower_flange_hinged') === true)
    return [['Wedge', 'none', 'The flange is hinged and follows the transom.']];
  const it = numbersOf(
    ask,
    ...(['wedge_edge', 'wedge_thick_edge', 'wedge_angle', 'transom_slope', 'shaft_lean'] as const),
  );
  if ('missing' in it) {
    unanswered.push(missingSentence('the wedge', it.missing));
    return [];
  }
  const [thin, thick, angle, slope, lean] = it.got;
  const up = slope > lean ? 'upwards' : 'downwards';
  return [
    [
      'Wedge',
      '1',
      angle === 0
        ? `flat, ${length(thin, units)} thick`
        : `${length(thin, units)} at one edge, ${length(thick, units)} at the other, measured level; ${angle.toFixed(1)}°; thin edge ${up}`,
    ],
  ];
}

/** For each foot, which way of mounting its flange needs a pad, and how deep that is hollowed. */
function padLine(
  ask: Ask,
  side: ReturnType<typeof feetInUse>[number],
  units: OrderGiven['units'],
): Line | string {
  const name = `${placeWords[side]}’s pad`;
  const it = numbersOf(
    ask,
    `${side}_pad_upright`,
    `${side}_pad_lying`,
    'pad_gap_sealed',
    'foot_width',
    'foot_height',
  );
  if ('missing' in it) return missingSentence(`the ${name.toLowerCase()}`, it.missing);
  const [upright = 0, lying = 0, sealed = 0, width = 0, height = 0] = it.got;
  const mounted = width <= height ? upright : lying;
  const way = width <= height ? 'upright' : 'lying';
  const each = (mm: number): string =>
    mm === 0
      ? 'none'
      : mm <= sealed
        ? `none, the sealant fills ${depth(mm, units)}`
        : `hollowed ${depth(mm, units)}`;
  return [
    name,
    mounted > sealed ? '1' : 'none',
    upright === 0 && lying === 0
      ? 'The face is flat there, whichever way the flange is mounted.'
      : `Flange upright: ${each(upright)}. Flange lying: ${each(lying)}. It is mounted ${way}.`,
  ];
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
  const lines = [...shimLines(given, unanswered, notes), ...wedgeLines(given, unanswered)];
  for (const side of feetInUse(given.ask)) {
    const line = padLine(given.ask, side, given.units);
    if (typeof line === 'string') unanswered.push(line);
    else lines.push(line);
  }
  const pad = numberOf(given.ask, 'foot_pad') ?? 0;
  if (pad > 0)
    notes.push(
      `Pads of ${length(pad, given.units)} under the feet: ${counted(feetInUse(given.ask).length, 'pad')} of the foot’s outline.`,
    );
  else if (lines.some(([name, count]) => name.endsWith('pad') && count === '1'))
    notes.push(
      'A foot needs a hollowed pad, and the plan’s pad is 0 mm thick. Enter the pad’s thickness on Gear: the bolts get longer by it.',
    );
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
