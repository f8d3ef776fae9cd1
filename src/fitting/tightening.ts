import { type Ask, numberOf } from '../order/ask.ts';
import { feetInUse } from '../order/feet.ts';
import { torqueWords } from '../order/torque.ts';

/** One round of the spanner. Common practice, no source: from the fixed end towards the shaft, in even turns. */
export interface Tightening {
  readonly name: string;
  readonly what: string;
  readonly why: string;
}

function turned(ask: Ask): string {
  const manual = numberOf(ask, 'gear_torque') ?? 0;
  if (manual > 0) return `to ${torqueWords(manual)}, the figure in the gear’s manual`;
  const first = numberOf(ask, 'torque_first');
  return first === undefined
    ? 'to the torque in the gear’s manual'
    : `to the torque in the gear’s manual; ${torqueWords(first)} to begin with is an estimate`;
}

/** What is tightened, in its order. */
export function tighteningOrder(ask: Ask): readonly Tightening[] {
  const feet = feetInUse(ask);
  const hinges = feet.length === 1 ? 'the strut’s hinges' : 'the struts’ hinges';
  return [
    {
      name: 'hull, lower',
      what: `Hull bolts of the lower bracket, half a turn each in turn, ${turned(ask)}.`,
      why: 'Even turns press packing and bedding flat; a plate pulled down at one corner stays crooked.',
    },
    {
      name: 'hull, feet',
      what: `Hull bolts of ${feet.length === 1 ? 'the foot' : 'both feet, one foot after the other'}, in the same way.`,
      why: 'What is fixed to the hull comes first, so that nothing further out is bent to fit.',
    },
    {
      name: 'tubes',
      what: `Clamps on ${feet.length === 1 ? 'the strut tube' : 'the strut tubes'}; any sleeve as the gear’s manual shows.`,
      why: 'A strut that slips on its clamp lets the shaft lean.',
    },
    {
      name: 'hinges',
      what: `Bolts of ${hinges}, at the foot first, then at the shaft.`,
      why: 'They find their angle while the shaft can still turn and slide.',
    },
    {
      name: 'shaft',
      what: 'Shaft clamps, the upper, then the lower, in turn; any sleeve as the manual shows.',
      why: 'Last, so that the shaft is not held crooked by anything before it.',
    },
    {
      name: 'again',
      what: 'Hang the bob again, swing both rudders hard over, and go round once more after a day, a week and a month.',
      why: 'Plastic, bedding and laminate give way under load.',
    },
  ];
}
