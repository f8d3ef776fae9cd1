import { cos } from '../calc/angle.ts';
import type { CellName } from '../plan/names.ts';
import type { Ask } from './ask.ts';
import { numberOf, numbersOf } from './ask.ts';
import type { BoltOrder } from './bolts.ts';

/** One layer a bolt goes through: what, and how thick, mm. */
export type Layer = readonly [what: string, thickness?: number];

const layer = (ask: Ask, what: string, name: CellName): Layer[] => {
  const thick = numberOf(ask, name);
  return thick === undefined || thick === 0 ? [] : [[what, thick]];
};

/** The wedge is measured level, and a bolt goes through it square to the transom. */
function wedgeLayer(ask: Ask): Layer[] {
  const it = numbersOf(ask, 'wedge_middle', 'transom_slope');
  if ('missing' in it || it.got[0] === 0) return [];
  return [['Wedge, at its middle, along the bolt', it.got[0] * cos(it.got[1])]];
}

const transomWords = (ask: Ask): string => {
  if (ask('transom_build') !== 'cored') return 'Transom';
  return ask('core_removed') === true
    ? 'Transom, core replaced by solid'
    : 'Transom, its core still in: replace it first';
};

/** Everything on one bolt, from outside to inside. */
export function stackOf(ask: Ask, bolt: BoltOrder): readonly Layer[] {
  const isLower = bolt.place === 'lower';
  const shims = numberOf(ask, 'shim_count') ?? 0;
  const hollow = isLower && ask('lower_pad_needed') === true;
  return [
    [bolt.rod === undefined ? 'Bolt head' : 'Thin nut and nut on the rod’s outer end'],
    ['Plain washer'],
    ...(bolt.taperWashers > 0 ? ([[`Taper washer, ${bolt.taper.toFixed(1)}°`]] as const) : []),
    ...layer(ask, 'Flange', 'flange_thickness'),
    ...(isLower ? wedgeLayer(ask) : []),
    ...(isLower
      ? layer(
          ask,
          `${shims} shim${shims === 1 ? '' : 's'}${hollow ? ', the one next to the hull hollowed' : ''}`,
          'shim_stack',
        )
      : layer(ask, 'Pad', 'foot_pad')),
    ['Sealant round the hole'],
    ...layer(ask, transomWords(ask), 'transom_thickness'),
    ...layer(ask, 'Epoxy bed', 'bed_thickness'),
    ...layer(ask, 'Backing plate', 'plate_thickness'),
    ['Plain washer'],
    [bolt.lock === 'locking nut' ? 'Locking nut' : 'Nut, and a thin second nut'],
  ];
}
