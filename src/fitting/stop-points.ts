import { tan } from '../calc/angle.ts';
import { type Ask, numberOf, numbersOf } from '../order/ask.ts';
import { feetInUse } from '../order/feet.ts';
import type { Units } from '../plan/plan.ts';
import { formatLength } from '../units/format-length.ts';

/** A reading that must be met before the work goes on. Common practice, no source. */
export interface StopPoint {
  readonly name: string;
  /** The step it stands before, as in `Before the second hole`. */
  readonly before: string;
  /** What must be read, with the numbers of this plan. */
  readonly must: string;
  /** What to do when it is not. */
  readonly otherwise: string;
}

const length = (mm: number, units: Units): string => formatLength(mm, { unit: units });

/** How far a bob from the upper clamp may hang off the shaft at the lower clamp. */
function bobWords(ask: Ask, units: Units): string {
  const it = numbersOf(ask, 'bracket_spacing', 'shaft_lean', 'lean_max');
  if ('missing' in it)
    return 'a bob hung from clamp to clamp shows the lean you planned. Its offset has no answer: the plan lacks the clamps’ heights or the greatest lean';
  const [spacing, lean, most] = it.got;
  const off = length(spacing * tan(most), units);
  return `a bob hung at the upper clamp reads ${length(spacing * tan(lean), units)} at the lower, ${length(spacing, units)} below, give or take ${off} fore and aft; and to the side, the boat’s list taken out, 0 within ${off}`;
}

/** The places where the work stops until a reading is met, in their order. */
export function stopPoints(ask: Ask, units: Units): readonly StopPoint[] {
  const gap = numberOf(ask, 'rudder_gap_min');
  const foot = feetInUse(ask).length === 1 ? 'the foot' : 'the feet';
  const thickness = numberOf(ask, 'transom_thickness');
  const extra = numberOf(ask, 'strut_trial_extra');
  return [
    {
      name: 'inside',
      before: 'Before the first hole',
      must: 'Inside, nothing is in the way, and a hand reaches every nut.',
      otherwise: 'Move the bracket in the plan.',
    },
    {
      name: 'core',
      before: 'Before a pilot hole is made full size',
      must:
        thickness === undefined
          ? 'The dust is dry, and the transom is as thick as planned.'
          : `The dust is dry, and the transom is ${length(thickness, units)} thick.`,
      otherwise: 'Cover the hole and call the yard or a surveyor.',
    },
    {
      name: 'second hole',
      before: 'Before the second hole of the lower bracket',
      must: `On the trial shaft, ${bobWords(ask, units)}.`,
      otherwise: 'Turn the bracket on its one bolt, and mark again.',
    },
    {
      name: 'feet',
      before: `Before the holes of ${foot}`,
      must: `On trial tubes the bob reads the same, and the rudders, hard over both ways, pass ${gap === undefined ? 'as far apart as the manual asks' : `at least ${length(gap, units)}`} apart.`,
      otherwise: 'Move the upper clamp or add a shim, in the plan first; mark the feet again.',
    },
    {
      name: 'recheck',
      before: `After the first hole of ${foot}`,
      must: 'Bolted there, the bob still reads the same.',
      otherwise:
        'Mark the other holes from the foot as it lies, or call the yard; never pull the shaft over with bolts.',
    },
    {
      name: 'cut',
      before: 'Before a tube is cut',
      must: 'All hull bolts are in, and the tube is measured from pin to pin.',
      otherwise: `Do not cut. Then cut${extra === undefined ? '' : ` ${length(extra, units)}`} long, try it, trim.`,
    },
    {
      name: 'sealed',
      before: 'Before the gear is used',
      must: 'Sealant has come out all round every flange, and no drop comes in.',
      otherwise: 'Take the bolt out, dry the hole, bed it again.',
    },
  ];
}
