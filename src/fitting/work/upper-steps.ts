import { numberOf } from '../../order/ask.ts';
import { feetInUse } from '../../order/feet.ts';
import type { InputName } from '../../plan/names.ts';
import {
  boltWords,
  feetWords,
  inUnit,
  isSingle,
  lengthWords,
  type WorkGiven,
  type WorkStep,
} from '../step.ts';
import { ONE, TWO, TWO_HOLDING, TWO_ONE_INSIDE } from './hands.ts';

/** How far a foot's marks may be from the plan, mm; assumed. */
const FOOT_OFF = 10;

/** What a strut is trimmed by at a time, mm; assumed. */
const TRIM = 1;

const DRILL =
  'Eye protection, a line on the tool, a lamp and somebody inside. Over water, tie the tool and yourself.';

const footChoices = (given: WorkGiven): readonly InputName[] =>
  feetInUse(given.ask).flatMap((side) => [`${side}_foot_y`, `${side}_foot_height`] as const);

/** From the upright shaft to struts cut to length. */
export function upperSteps(given: WorkGiven): readonly WorkStep[] {
  const feet = feetWords(given);
  const single = isSingle(given);
  const gap = numberOf(given.ask, 'rudder_gap_min');
  const struts = single ? 'the trial strut' : 'both trial struts';
  return [
    {
      name: 'plumb',
      title: 'Plumb it fore and aft',
      how: `Put the upper clamp on at ${lengthWords(given, 'upper_bracket_height')} and hang the bob again, now aft of the tube. Push or pull the top until the bob reads the lean you planned, and hold it there with a line or a batten.`,
      why: 'The struts only hold what they find; the lean is set now.',
      tools: 'Plumb bob, tape, light line or batten',
      hands: TWO_HOLDING,
      check: 'The lean fore and aft, with the boat’s trim taken out, is within what you accept.',
      otherwise:
        'Change the stack: one more shim moves the whole shaft aft, a wedge turns it. Enter it in the plan first.',
      caution: 'A shaft held by one bracket can fall. Its line stays on the strong point.',
    },
    {
      name: 'trial_struts',
      title: 'Try it on trial struts',
      how: `Clamp ${struts}, cut long, between the shaft and ${feet} held or taped on the marks. Swing both rudders hard over, each way and against each other, and measure where they are nearest.`,
      why: 'Everything can still be moved; nothing of it is drilled.',
      tools: 'Trial tubes, tape, clamps',
      hands: 'Two or three people: one holds the shaft',
      check: 'The rudders pass as far apart as you asked, everywhere; the drive unit goes on and off.',
      otherwise:
        'Move the upper clamp or add a shim, in the plan first. Do not accept less because the day is late.',
      caution: 'Keep fingers out from between the rudders.',
      reading: {
        what: 'Between the two rudders, hard over, nearest',
        unit: 'mm',
        ...(gap === undefined ? {} : { low: gap }),
      },
    },
    {
      name: 'mark_feet',
      title: `Mark ${feet}`,
      how: `Let ${feet} lie flat, with a pad where the hull is curved. Mark round the flange and through one hole of each. Look inside once more at those places.`,
      why: 'The real struts point to a place of their own, a little beside the plan’s.',
      tools: 'Pencil, transfer punch, lamp',
      hands: TWO,
      check: `From the centreline and the waterline mark, the marks are within ${inUnit(given, FOOT_OFF)} of the plan.`,
      otherwise: 'Enter the places as they are under As fitted and look at the limits before you drill.',
      holes: 'feet',
    },
    {
      name: 'one_foot_hole',
      title: single ? 'Drill one hole of the foot' : 'Drill one hole of each foot',
      how: `One hole each: pilot, dust, then ${boltWords(given)}. Bolt ${feet} on, dry, hand tight.`,
      why: 'With one bolt a foot still turns a little; with two it does not.',
      tools: 'Drill, two bits, tape, spanners',
      hands: TWO_ONE_INSIDE,
      check: 'The dust is dry, the bolt goes through by hand.',
      otherwise: 'Wet dust or another thickness: cover the hole, call the yard or a surveyor.',
      caution: DRILL,
      gate: 'drill',
      holes: 'feet',
      stop: 'feet',
      drills: footChoices(given),
    },
    {
      name: 'recheck',
      title: 'Read everything again',
      how: `Hang the bob; measure top and bottom, fore and aft and to the side. Measure the clamps’ heights and where ${feet} ${single ? 'is' : 'are'}. Enter all of it under As fitted.`,
      why: 'This is the last time that something can be moved.',
      tools: 'Plumb bob, tape, level',
      hands: TWO,
      check: 'The bob reads as before, and no limit under As fitted is outside.',
      otherwise:
        'Mark the other holes from the foot as it lies, or call the yard. Never pull the shaft over with bolts.',
    },
    {
      name: 'other_foot_holes',
      title: 'Drill the other holes',
      how: 'One after another, through the flange as it lies: pilot, dust, full size; a bolt into each before the next.',
      why: 'A bolt in every finished hole keeps the flange from creeping.',
      tools: 'Drill, two bits, tape, spanners',
      hands: TWO_ONE_INSIDE,
      check: 'All bolts go through by hand.',
      otherwise: 'Ease the hole that binds.',
      caution: DRILL,
      gate: 'drill',
      holes: 'feet',
      stop: 'recheck',
      drills: footChoices(given),
    },
    {
      name: 'cut_struts',
      title: single ? 'Measure and cut the strut' : 'Measure and cut the struts',
      how: 'Measure pin to pin on the bolted feet. Cut to the length given under As fitted, longer by the ± of its readings; try, trim, file the ends smooth. Write down what you cut.',
      why: 'A tube cut long is trimmed; a tube cut short is bought again.',
      tools: 'Tape, saw with a guide or tube cutter, file, marker',
      hands: ONE,
      check: 'With the pins in, the shaft has not moved, and nothing is under strain.',
      otherwise: `Trim ${inUnit(given, TRIM)} at a time. Too short by more than the clamp’s grip: take a new tube.`,
      caution: 'Cut ends are sharp. Clamp the tube; wear gloves to handle it and take them off at the saw.',
      gate: 'cut',
      stop: 'cut',
    },
  ];
}
