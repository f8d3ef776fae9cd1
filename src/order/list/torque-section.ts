import { numbersOf } from '../ask.ts';
import { missingSentence } from '../missing.ts';
import type { OrderGiven, OrderSection } from '../section.ts';

const POUND_FOOT = 1.3558179483314;

export function torqueSection({ ask, units }: OrderGiven): OrderSection {
  const it = numbersOf(
    ask,
    ...(['gear_torque', 'torque_low', 'torque_high', 'torque_factor_low', 'torque_factor_high'] as const),
    ...(['clamp_force', 'bolt_diameter'] as const),
  );
  const shared = {
    title: 'Tightening torque',
    lead: 'The gear maker’s figure comes first.',
    restsOn: [
      ...['gear_torque', 'bolt_tightening_stress', 'torque_factor_low', 'torque_factor_high', 'plate_area'],
      ...['laminate_strength', 'bolt_diameter'],
    ],
  };
  if ('missing' in it)
    return { ...shared, tables: [], notes: [], unanswered: [missingSentence('the torque', it.missing)] };
  const [manual, low, high, slippery, dry, force, diameter] = it.got;
  const torque = (value: number): string => {
    const metric = `${Math.round(value)} N·m`;
    const pounds = `${Math.round(value / POUND_FOOT)} lbf·ft`;
    return units === 'mm' ? metric : units === 'in' ? pounds : `${metric} (${pounds})`;
  };
  const rows: (readonly string[])[] = [
    [
      'The gear’s manual',
      manual > 0 ? torque(manual) : 'none entered',
      manual > 0 ? 'Use this one.' : 'Look there first; enter it on Gear.',
    ],
    [
      'Estimate, least friction',
      torque(low),
      `T = K·F·d with K ${slippery}, F ${(force / 1000).toFixed(1)} kN, d ${diameter} mm`,
    ],
    ['Estimate, most friction', torque(high), `The same with K ${dry}`],
  ];
  return {
    ...shared,
    tables: [
      {
        heads: [{ text: 'From' }, { text: 'Torque', figure: true, share: 0.8 }, { text: 'How', share: 2 }],
        rows,
      },
    ],
    notes: [
      'The same torque pulls a slippery bolt more than twice as hard as a dry one: put paste against seizing on every thread, and begin at the lower figure. Stop when plastic or laminate begins to give.',
    ],
    unanswered: [],
  };
}
