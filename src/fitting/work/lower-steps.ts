import { numberOf } from '../../order/ask.ts';
import { THICKNESS_OFF } from '../fit-tolerance.ts';
import { boltWords, inUnit, lengthWords, type WorkGiven, type WorkStep } from '../step.ts';
import { ONE, TWO, TWO_HOLDING, TWO_ONE_INSIDE } from './hands.ts';

/** By how much two measurements of a mark may differ, mm; assumed. */
const MARK_OFF = 1;

const DRILL =
  'Eye protection, a line on the tool, a lamp and somebody inside: a bit comes through without warning.';

/** What to put under the lower flange, in words. */
function packingWords(given: WorkGiven): string {
  const { ask } = given;
  const count = numberOf(ask, 'shim_count') ?? 0;
  const shims =
    count === 0
      ? 'no shim'
      : `${count} shim${count === 1 ? '' : 's'} of ${lengthWords(given, 'shim_thickness')}`;
  const wedge =
    ask('lower_flange_hinged') === true ? '' : ', and the wedge with its thick edge where the plan shows it';
  return `${shims}${wedge}`;
}

/** From the drop cloth to both bolts of the lower bracket. */
export function lowerSteps(given: WorkGiven): readonly WorkStep[] {
  const { ask } = given;
  const thick = numberOf(ask, 'transom_thickness');
  const swivel =
    ask('lower_flange_hinged') === true
      ? 'Let its hinge find the slope of the transom'
      : 'Set the wedge under it';
  return [
    {
      name: 'inside',
      title: 'Look inside, lay everything out',
      how: 'Read the gear’s manual through once more. Open the lockers, look at every place where a bolt will come through, and hold a hand and a spanner (wrench) there. Turn off what a drill could meet: wiring, gas, water.',
      why: 'A hole cannot be moved; a locker lid can.',
      tools: 'Manual, job sheet, lamp, mirror, spanner',
      hands: ONE,
      check: 'Inside, nothing is in the way of any hole, and a hand reaches every nut.',
      otherwise: 'Move the bracket in the plan, or ask the yard to open the lining.',
      caution: 'Gas, wiring and tanks can be right behind a transom. Close the gas at the bottle first.',
    },
    {
      name: 'cloth',
      title: 'Rig a drop cloth, mark the first hole',
      how: `Rig a drop cloth under the stern. Mark the centreline and the waterline height, then the lower bracket’s two holes, from the hole table. Its middle is ${lengthWords(given, 'lower_bracket_height')} above the waterline mark.`,
      why: 'What falls into the water is gone; marks taken from one line agree with each other.',
      tools: 'Drop cloth, tape, square, pencil, masking tape, level',
      hands: TWO,
      check: `Measured again from the other side, the marks differ by no more than ${inUnit(given, MARK_OFF)}.`,
      otherwise: 'Strike them out and mark again from the centreline.',
      caution: 'Over water, wear a lifejacket and tie yourself on. Never lean out alone.',
      holes: 'lower',
    },
    {
      name: 'pilot',
      title: 'Pilot the first hole',
      how: 'Drill the first of the lower bracket’s holes small, square to the transom, slowly. Look at the dust all the way, then measure how thick the transom is there.',
      why: 'A small hole tells what the transom is made of, and is easily closed.',
      tools: 'Drill, pilot bit, depth gauge or bent wire, vacuum cleaner',
      hands: TWO_ONE_INSIDE,
      check: 'The dust is dry and of what you expect; the transom is as thick as planned.',
      otherwise:
        'Close the hole with tape. Wet or dark dust, a core where you planned none, or another thickness: call the yard or a surveyor before any other hole.',
      caution: DRILL,
      gate: 'drill',
      holes: 'lower',
      stop: 'inside',
      reading: {
        what: 'Thickness of the transom',
        unit: 'mm',
        fitted: 'transom_thickness',
        ...(thick === undefined ? {} : { low: thick - THICKNESS_OFF, high: thick + THICKNESS_OFF }),
      },
    },
    {
      name: 'first_hole',
      title: 'Drill it full size',
      how: `Open the pilot hole to ${boltWords(given)}. Put tape on both faces, and go slowly as the bit comes through.`,
      why: 'The pilot hole keeps the large bit where the mark is.',
      tools: 'Drill, bits in two sizes, tape',
      hands: TWO_ONE_INSIDE,
      check: 'The bolt goes through by hand and is square to the transom.',
      otherwise: 'Ease it with a round file, towards the mark. If it is not square, stop and call the yard.',
      caution: DRILL,
      gate: 'drill',
      holes: 'lower',
      stop: 'core',
      drills: ['lower_bracket_height', 'shaft_offset'],
    },
    {
      name: 'shaft_line',
      title: 'Tie the shaft and the bracket to the boat',
      how: 'Before the bracket hangs on its first bolt, tie a line round the shaft, or the trial tube, and another round the bracket. Make both fast to a strong point such as a cleat or a winch, not to the pushpit (stern pulpit), with just enough slack to work. Leave them on until the last shaft clamp is tight.',
      why: 'A bracket on one bolt turns, a clamp slips, and what falls then is gone or hurts somebody.',
      tools: 'Two lines, a strong point of the boat',
      hands: TWO_HOLDING,
      check: 'Each line alone holds the weight, and the strong point does not move.',
      otherwise: 'Take another strong point. Do not hang the bracket until both lines hold.',
      caution: 'The shaft is heavy. Nobody is below it, in the water or in a dinghy.',
    },
    {
      name: 'trial_shaft',
      title: 'Align on a trial shaft',
      how: `Hang the lower bracket on its one bolt over ${packingWords(given)}. ${swivel}. Clamp the shaft, or a straight tube of its size, into it; turn the bracket on its bolt until the tube is upright against the boat’s own centreline. Hang a bob beside the tube, measure to it at the upper and the lower clamp, and enter the two under As fitted.`,
      why: 'Two bolts fix the side lean for good; one bolt still lets the bracket turn.',
      tools: 'Trial tube, plumb bob, tape, level on a known athwartships line',
      hands: TWO_HOLDING,
      check: 'The lean to the side, with the boat’s list taken out, is within what you accept.',
      otherwise:
        'Turn the bracket on its one bolt and read again. If the two holes then lie outside the flange, force nothing: change the plan.',
      caution:
        'One bolt alone holds the bracket: one person keeps hold of the shaft until the second bolt is in.',
    },
    {
      name: 'second_hole',
      title: 'Drill the second hole',
      how: 'Mark through the flange as it lies. Pilot, look at the dust, then full size. Put the second bolt in, dry.',
      why: 'Marked through the flange, the hole is where the bracket really is.',
      tools: 'Transfer punch or pencil, drill, two bits, tape',
      hands: TWO_ONE_INSIDE,
      check: 'Both bolts go through by hand; the tube has not moved.',
      otherwise: 'Ease the second hole. Do not draw the bracket straight with the nut.',
      caution: DRILL,
      gate: 'drill',
      holes: 'lower',
      stop: 'second hole',
      drills: ['lower_bracket_height', 'shaft_offset', 'shim_count', 'shim_thickness', 'wedge_edge'],
    },
  ];
}
