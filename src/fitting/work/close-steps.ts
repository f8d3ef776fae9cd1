import { numberOf } from '../../order/ask.ts';
import { keyOf } from '../key.ts';
import { feetWords, isSingle, type Wait, type WorkGiven, type WorkStep } from '../step.ts';
import { type Tightening, tighteningOrder } from '../tightening.ts';
import { ONE, TWO, TWO_HOLDING, TWO_ONE_INSIDE } from './hands.ts';

const AGAIN = 'again';

export const WAITS: Readonly<Record<'epoxy' | 'sealant', Wait>> = {
  epoxy: { what: 'The epoxy', done: 'hardened', from: 'plates', hours: 'epoxy_hours' },
  sealant: { what: 'The sealant', done: 'cured', from: 'bed', hours: 'sealant_hours' },
};

const isHull = ({ name }: Tightening): boolean => name.startsWith('hull');

/** Everything comes off, and the holes are sealed and get their backing plates. */
function epoxySteps({ ask }: WorkGiven): readonly WorkStep[] {
  const core =
    ask('transom_build') === 'cored' ? 'Seal the edge of every hole with epoxy where it cuts core. ' : '';
  return [
    {
      name: 'take_off',
      title: 'Take it all off again',
      how: 'In the reverse of the order it went on: drive unit, struts, upper clamp, shaft, then feet and lower bracket. Mark every part, shim and bolt for its own place as it comes off, top edge up.',
      why: 'Holes cut by hand fit only the part they were drilled through.',
      tools: 'Spanners, marker, tape, box for the bolts',
      hands: TWO_HOLDING,
      check: 'Every part is marked and inside the boat or ashore; the line came off last.',
      otherwise: 'Offer the unmarked part up to its holes and mark it now.',
      caution:
        'The shaft is heavy and comes free all at once: lines on, and one person holds it until it is on deck.',
    },
    {
      name: 'plates',
      title: 'Seal the holes, lay the backing plates',
      how: `${core}Chamfer the outer edges of the holes, clean, dry. Lay the backing plates in their epoxy inside, bolts waxed and pushed through to line them up. Tick this when the last plate is in: the hardening time counts from then.`,
      why: 'A plate in a hard, flat bed presses evenly; the chamfer holds a ring of sealant where water would come in.',
      tools: 'Countersink, rags, solvent, epoxy, wax, gloves',
      hands: TWO_ONE_INSIDE,
      check: 'Every plate lies flat, epoxy has come out all round, and every bolt turns freely.',
      otherwise: 'Take the plate off while the epoxy is soft, add more and lay it again.',
      caution: 'Solvent and epoxy: gloves, fresh air, no flame. Read the tin first.',
    },
    {
      name: 'harden',
      title: 'Tape the holes, let the epoxy harden',
      how: 'Put tape over every hole outside, whether its waxed bolt is in it or not, pressed down all round; look at it again before you leave the boat. Then wait as long as the maker of the epoxy gives for the temperature you have; enter that figure here. Nothing is bolted to the plates before.',
      why: 'Rain and wash come in through an open hole, and epoxy that is still soft creeps out from under a plate.',
      tools: 'Strong tape, thermometer, the epoxy’s data sheet',
      hands: ONE,
      check: 'The maker’s time is over, and a fingernail leaves no mark on what was left over in the pot.',
      otherwise: 'Wait longer; cold weather can double the time. If it stays soft, call the yard.',
      caution: 'Never leave the boat afloat with a hole open.',
      wait: WAITS.epoxy,
    },
  ];
}

/** The brackets go on for good. */
function bedSteps(given: WorkGiven): readonly WorkStep[] {
  const count = numberOf(given.ask, 'shim_count') ?? 0;
  const shims = count === 0 ? '' : ' over its shims';
  return [
    {
      name: 'bed',
      title: 'Bed the brackets in sealant',
      how: `The lower bracket first${shims}, then ${feetWords(given)}, each part back in the place it was marked for. Sealant round every hole and on the flange, next to the hull; all bolts in, anti-seize paste on the threads, nuts hand tight only. Tick this when the last flange is on: the curing time counts from then.`,
      why: 'Squeezed dry at once, sealant leaves nothing behind to seal with.',
      tools: 'Sealant, anti-seize paste, rags, gloves, spanners',
      hands: TWO_ONE_INSIDE,
      check: 'Sealant comes out all round every flange.',
      otherwise: 'Take that flange off, clean it, lay more.',
      caution: 'Sealant and solvent: gloves, fresh air, no flame. Read the tube first.',
      gate: 'bed',
    },
    {
      name: 'cure',
      title: 'Let the sealant cure',
      how: 'Wait as long as the maker of the sealant gives before it may be loaded; enter that figure here. No torque and no shaft on the brackets before.',
      why: 'Sealant that is still soft is pressed out by the first torque and dragged by the first load.',
      tools: 'The sealant’s data sheet',
      hands: ONE,
      check: 'The maker’s time is over, and what came out round the flanges is firm.',
      otherwise: 'Wait longer; cold and dry air slow it down.',
      wait: WAITS.sealant,
    },
  ];
}

function tightenStep(it: Tightening, i: number, all: number): WorkStep {
  const hull = isHull(it);
  return {
    name: keyOf(`tighten ${it.name}`),
    title: `Tighten, ${i + 1} of ${all}: ${TITLE[it.name] ?? it.name}`,
    how: it.what,
    why: it.why,
    tools: 'Torque wrench, spanner, anti-seize paste',
    hands: hull ? TWO_ONE_INSIDE : TWO_HOLDING,
    check: hull
      ? 'Plastic and laminate do not give; the flange lies flat.'
      : 'Nothing has moved: the bob reads as before.',
    otherwise: hull
      ? 'Stop turning when plastic or laminate begins to give. Fit a larger plate, or call the yard.'
      : 'Slacken it, let the part find its place, begin again.',
    gate: 'tighten',
  };
}

function putBack(given: WorkGiven): WorkStep {
  const struts = isSingle(given) ? 'the strut' : 'the struts';
  return {
    name: 'put_back',
    title: 'Put the shaft and struts back',
    how: `Line on the strong point first. Then, in this order: the shaft into the lower clamp, the upper clamp, ${struts} to ${feetWords(given)} and then to the upper clamp, pins in, and the drive unit. Everything hand tight. Fit the stop collar or through pin, and the lanyard, now.`,
    why: 'Put on in this order, each part hangs on one that already holds.',
    tools: 'Lines, spanners, pins',
    hands: TWO_HOLDING,
    check: 'Every pin goes in by hand, and the shaft cannot drop even with both clamps slack.',
    otherwise: 'A pin that must be forced: slacken everything and start again from the lower clamp.',
    caution:
      'The shaft is heavy. One person holds it until both clamps and the collar or pin are on; nobody is below it.',
  };
}

/** From taking it all off to the last look. */
export function closeSteps(given: WorkGiven): readonly WorkStep[] {
  const tightened = tighteningOrder(given.ask).filter((it) => it.name !== AGAIN);
  const steps = tightened.map((it, i) => tightenStep(it, i, tightened.length));
  const hull = tightened.filter(isHull).length;
  return [
    ...epoxySteps(given),
    ...bedSteps(given),
    ...steps.slice(0, hull),
    putBack(given),
    ...steps.slice(hull),
    {
      name: 'final',
      title: 'Last look',
      how: 'Hang the bob. Swing both rudders hard over. See that collar or through pin and the lanyard to a strong point are on. Look inside for drops with water against the transom.',
      why: 'What is found now is found in harbour.',
      tools: 'Plumb bob, tape, hose',
      hands: TWO,
      check: 'Everything swings free, the lanyard is on, no drop comes in. The handover record is filled in.',
      otherwise:
        'Take the bolt out, dry the hole, bed it again. A leak you cannot find: call the yard before you sail.',
      stop: 'sealed',
    },
  ];
}

const TITLE: Readonly<Record<string, string>> = {
  'hull, lower': 'hull bolts of the lower bracket',
  'hull, feet': 'hull bolts at the feet',
  tubes: 'clamps on the tubes',
  hinges: 'hinges',
  shaft: 'shaft clamps',
};
