import { numberOf } from '../../order/ask.ts';
import { boltWords, lengthWords, type WorkGiven, type WorkStep } from '../step.ts';

/** Depth by which a transom may differ from the plan before bolts, limits and shims are looked at anew; assumed. */
const THICKNESS_OFF = 3;

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
    ask('lower_flange_hinged') === true ? '' : ', and the wedge, thick edge where the plan shows it';
  return `${shims}${wedge}`;
}

/** From the cloth to both bolts of the lower bracket. */
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
      how: 'Read the gear’s manual through once more. Open lockers, look at every place where a bolt will come through, and hold a hand and a spanner there. Turn off what a drill could meet: wiring, gas, water.',
      why: 'A hole cannot be moved; a locker lid can.',
      tools: 'Manual, job sheet, lamp, mirror',
      hands: 'One',
      check: 'Inside, nothing is in the way of any hole, and a hand reaches every nut.',
      otherwise: 'Move the bracket in the plan, or ask the yard to open the lining.',
      caution: 'Gas, wiring and tanks lie behind transoms. Close the gas at the bottle first.',
    },
    {
      name: 'cloth',
      title: 'Hang the cloth, mark the first hole',
      how: `Hang a drop cloth under the stern. Mark the centreline and the waterline height, then the lower bracket’s two holes, from the hole table. Its middle lies ${lengthWords(given, 'lower_bracket_height')} above the waterline mark.`,
      why: 'What falls into the water is gone; marks taken from one line agree with each other.',
      tools: 'Drop cloth, tape, square, pencil, masking tape, level',
      hands: 'Two',
      check: 'Measured again from the other side, the marks differ by no more than 1 mm.',
      otherwise: 'Strike them out and mark anew from the centreline.',
    },
    {
      name: 'pilot',
      title: 'Pilot the first hole',
      how: 'Drill the first of the lower bracket’s holes small, square to the transom, slowly. Look at the dust all the way, then measure how thick the transom is there.',
      why: 'A small hole tells what the transom is made of, and is easily closed.',
      tools: 'Drill, pilot bit, depth gauge or bent wire, vacuum cleaner',
      hands: 'Two: one inside',
      check: 'The dust is dry and of what you expect; the transom is as thick as planned.',
      otherwise:
        'Close the hole with tape. Wet or dark dust, a core where you planned none, or another thickness: call the yard or a surveyor before any other hole.',
      caution: DRILL,
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
      how: `Open the pilot hole to ${boltWords(given)}. Put tape on both faces, go slowly at the far side.`,
      why: 'The pilot keeps the large bit where the mark is.',
      tools: 'Drill, bits in two sizes, tape',
      hands: 'Two: one inside',
      check: 'The bolt goes through by hand and stands square to the transom.',
      otherwise: 'Ease it with a round file, towards the mark. If it stands askew, stop and call the yard.',
      caution: DRILL,
      stop: 'core',
      drills: ['lower_bracket_height', 'shaft_offset'],
    },
    {
      name: 'trial_shaft',
      title: 'Align on a trial shaft',
      how: `Hang the lower bracket on its one bolt over ${packingWords(given)}. ${swivel}. Clamp the shaft, or a straight tube of its size, into it; turn the bracket on its bolt until the tube stands upright against the boat’s own centreline. Hang a bob beside the tube, measure to it at the upper and the lower clamp, and enter the two under As fitted.`,
      why: 'Two bolts fix the side lean for good; one bolt still lets the bracket turn.',
      tools: 'Trial tube, plumb bob, tape, level on a known athwartships line',
      hands: 'Two',
      check: 'The lean to the side, the boat’s list taken out, is within what you accept.',
      otherwise:
        'Turn the bracket on its one bolt and read again. If the two holes then lie outside the flange, move nothing by force: change the plan.',
    },
    {
      name: 'second_hole',
      title: 'Drill the second hole',
      how: 'Mark through the flange as it lies. Pilot, look at the dust, then full size. Put the second bolt in, dry.',
      why: 'Marked through the flange, the hole is where the bracket really is.',
      tools: 'Transfer punch or pencil, drill, two bits, tape',
      hands: 'Two: one inside',
      check: 'Both bolts go through by hand; the tube stands as it stood.',
      otherwise: 'Ease the second hole. Do not draw the bracket straight with the nut.',
      caution: DRILL,
      stop: 'second hole',
      drills: ['lower_bracket_height', 'shaft_offset', 'shim_count', 'shim_thickness', 'wedge_edge'],
    },
  ];
}
