import type { CellName } from '../../plan/names.ts';
import type { Value } from '../../plan/plan.ts';
import {
  bladePulls,
  bladeTurns,
  boltStretches,
  boltSwings,
  footGivesWay,
  PRESSURE_AT,
  pryingAdds,
  SEA_SPEED,
  seaStrikes,
  slipLoads,
  stackShrinks,
} from './estimates.ts';

/** Reads the value of a cell. */
export type Look = (name: CellName) => Value;

/** A piece of a note: words, the value of a cell, or words worked out from cells. */
export type Piece = string | { readonly cell: string } | { readonly works: (valueAt: Look) => string };

export interface Note {
  readonly title: string;
  /** Words that an owner may look for it by, beside those that stand in it. */
  readonly asked?: string;
  readonly pieces: readonly Piece[];
}

const cell = (name: CellName): Piece => ({ cell: name });
const works = (run: (valueAt: Look) => string): Piece => ({ works: run });

const numberAt = (valueAt: Look, name: CellName): number | undefined => {
  const value = valueAt(name);
  return typeof value === 'number' ? value : undefined;
};

/** Yield of plain 316 bar, MPa; stands in the model beside that of duplex. */
const PLAIN_BAR = 205;

/** The stock's share were it plain bar: the share goes with one over the yield. */
function plainBarShare(valueAt: Look): string {
  const share = numberAt(valueAt, 'stock_utilisation');
  const yieldNow = numberAt(valueAt, 'stock_yield');
  if (share === undefined || yieldNow === undefined) return 'no answer';
  return ((share * yieldNow) / PLAIN_BAR).toFixed(2);
}

/** Whether the packing is past four thirds of the bolt's diameter. */
function packingWords(valueAt: Look): string {
  const packing = numberAt(valueAt, 'lower_packing');
  const diameter = numberAt(valueAt, 'bolt_diameter');
  if (packing === undefined || diameter === undefined) return 'That cannot be told here.';
  return packing > (4 * diameter) / 3 ? 'It is past that here.' : 'It is not past that here.';
}

const SHARES: readonly (readonly [name: CellName, words: string])[] = [
  ['stock_utilisation', 'the stock'],
  ['tube_utilisation', 'the tube'],
  ['strut_utilisation', 'the struts'],
  ['bolt_utilisation', 'the lower bolts'],
  ['plate_utilisation', 'the laminate under the plate'],
  ['skin_utilisation', 'the skin round a lower bolt'],
  ['skin_bearing_utilisation', 'the skin beside a lower bolt'],
  ['foot_bolt_utilisation', 'the foot bolts'],
  ['foot_plate_utilisation', 'the laminate under a foot’s plate'],
  ['foot_skin_utilisation', 'the skin round a foot bolt'],
  ['foot_bearing_utilisation', 'the skin beside a foot bolt'],
];

/** Parts by share of what they bear, the fullest first. */
function givesFirst(valueAt: Look): string {
  const known = SHARES.flatMap(([name, words]) => {
    const share = numberAt(valueAt, name);
    return share === undefined ? [] : [{ words, share }];
  });
  if (known.length === 0) return 'no answer';
  return known
    .sort((a, b) => b.share - a.share)
    .map(({ words, share }) => `${words} ${share.toFixed(2)}`)
    .join(', ');
}

/** What no limit covers, in the order of the work. The figures come from the plan. */
export const NOTES: readonly Note[] = [
  {
    title: 'When the manual and this page disagree',
    asked: 'wins right maker differs contradicts rules',
    pieces: [
      'The gear’s manual wins. Then the yard, the surveyor, and the rules that apply where the boat is used.',
    ],
  },
  {
    title: 'Loaded or light',
    asked: 'waterline empty mark ballast trim',
    pieces: [
      'Heights here count from the waterline of the boat loaded as it sails. A boat lying light floats higher: measure from its loaded mark, not from the water of the day.',
    ],
  },
  {
    title: 'Going astern, or uncoupled',
    asked: 'reverse backwards engine',
    pieces: [
      'Turned right round, the auxiliary rudder passes the boat’s own by ',
      cell('rudder_gap_turned'),
      '; minus means that they can meet. Lash the auxiliary rudder before you go astern.',
    ],
  },
  {
    title: 'A wedge leaves faces at an angle',
    pieces: [
      'The wedge is ',
      cell('wedge_middle'),
      ' at its middle. Where there is one, head and nut do not sit square: fit taper washers, or a wedge inside too.',
    ],
  },
  {
    title: 'Loose sheets creep',
    pieces: [
      'Plastic sheets give way slowly. Tighten again after a day, a week and a month. The bolts cross ',
      cell('lower_packing'),
      ' of packing; past four thirds of their diameter of ',
      cell('bolt_diameter'),
      ', use rigid sleeves or one bonded block. ',
      works(packingWords),
      ' With the clamping lost, the bolts’ cores would bend at ',
      cell('shim_bolt_bending'),
      '.',
    ],
  },
  {
    title: 'The clamping is soon lost',
    asked: 'preload tension creep loosen retighten',
    pieces: [
      'Tightened to ',
      cell('clamp_force'),
      ', a lower bolt is only ',
      works(boltStretches),
      ' longer than before. Once shims, sealant or laminate have given way by as much, which is ',
      works(stackShrinks),
      ' of the shim stack, nothing is clamped any more and the bolts bend. That is why they are tightened again, and why sleeves or one bonded block are better than loose sheets.',
    ],
  },
  {
    title: 'The blade’s own turning moment',
    asked: 'torque twist feedback centre of pressure',
    pieces: [
      `The loads take the water’s force as acting on the shaft’s axis. At stall it acts behind it, at about ${PRESSURE_AT} of the chord (from memory), and turns the stock with about `,
      works(bladeTurns),
      '. The drive unit holds that. If it hands all of it to the lower bracket, each lower bolt is pulled by about ',
      works(bladePulls),
      ' more.',
    ],
  },
  {
    title: 'What slips at the clamp, ahead of the shaft',
    pieces: [
      'The struts lift the upper clamp at its pins, ahead of the axis. That changes what the two clamps hold by about ',
      works(slipLoads),
      ', which the loads leave out.',
    ],
  },
  {
    title: 'Flanges that bend',
    asked: 'prying lever',
    pieces: [
      'The loads take flanges as stiff. One that bends levers on its own edge and pulls its bolts harder: a lower bolt by up to ',
      works(pryingAdds),
      ' more, were the flange thin. Never thin or slot a flange, and put washers of the full size under every head.',
    ],
  },
  {
    title: 'The steel of the stock',
    pieces: [
      'At a yield of ',
      cell('stock_yield'),
      ' the stock bears ',
      cell('stock_utilisation'),
      ` of what it can at stall. In plain 316 bar, ${PLAIN_BAR} MPa where duplex has 450, it would bear `,
      works(plainBarShare),
      '.',
    ],
  },
  {
    title: 'What gives first',
    pieces: [
      'By share of what each bears: ',
      works(givesFirst),
      '. Stock or blade should go before skin and bolts, which are the hull’s.',
    ],
  },
  {
    title: 'How long a single strut may be',
    pieces: [
      'In practice the force of daily steering sets the length of a single strut, here ',
      cell('steering_force'),
      '. At stall the force is ',
      cell('side_force'),
      '.',
    ],
  },
  {
    title: 'The grip of the clamps',
    pieces: [
      'Sloping struts and the gear’s weight push along the shaft with ',
      cell('clamp_slip'),
      '. Hold that beside what the manual says a clamp grips. Friction alone must not hold the shaft.',
    ],
  },
  {
    title: 'Bearings, clamps, bracket arms, hinge pins',
    pieces: ['Their strength is not judged here. It is the gear’s own: see its manual.'],
  },
  {
    title: 'Bending, slamming, fatigue',
    pieces: [
      'These are estimates beside the results, not limits. At stall the foot of the tube gives way by about ',
      works(footGivesWay),
      ', with clamps that do not give. A sea that strikes the tube broadside at an assumed ',
      `${SEA_SPEED} m/s pushes with about `,
      works(seaStrikes),
      ' on each metre. The pull in a lower bolt swings by about ',
      works(boltSwings),
      ' under daily steering; EN 1993-1-9, table 8.1, allows a bolt in tension 50 MPa two million times, from memory. A boat out for weeks asks for more room than a coastal one.',
    ],
  },
  {
    title: 'Touching bottom',
    asked: 'touches run aground grounding strike hits rock sand keel',
    pieces: [
      'The auxiliary rudder may touch first. Know how its blade breaks away or lifts before you need it.',
    ],
  },
  {
    title: 'Reaching the nuts',
    asked: 'reached hand access spanner locker inside',
    pieces: [
      'Look inside at every hole before you drill: a locker, a stringer, wiring or a tank may be there, and somebody must hold the spanner.',
    ],
  },
];
