import type { OrderGiven, OrderSection } from '../section.ts';
import { torqueOrder, torqueWords } from '../torque.ts';

export function torqueSection({ ask }: OrderGiven): OrderSection {
  const it = torqueOrder(ask);
  const shared = {
    title: 'Tightening torque',
    lead: 'The gear maker’s figure comes first.',
    restsOn: [
      ...(['gear_torque', 'bolt_tightening_stress', 'torque_factor_low', 'torque_factor_high'] as const),
      ...(['plate_area', 'laminate_strength', 'bolt_diameter'] as const),
    ],
  };
  if (typeof it === 'string') return { ...shared, tables: [], notes: [], unanswered: [it] };
  const { manual, low, high, factorLow, factorHigh, force, diameter } = it;
  const rows: (readonly string[])[] = [
    [
      'The gear’s manual',
      manual === undefined ? 'none entered' : torqueWords(manual),
      manual === undefined ? 'Look there first; enter it on Gear.' : 'Use this one.',
    ],
    [
      'Estimate, least friction',
      torqueWords(low),
      `T = K·F·d with K ${factorLow}, F ${(force / 1000).toFixed(1)} kN, d ${diameter} mm`,
    ],
    ['Estimate, most friction', torqueWords(high), `The same with K ${factorHigh}`],
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
      'The same torque pulls a slippery bolt more than twice as hard as a dry one: put anti-seize paste on every thread, and begin at the lower figure. Stop when plastic or laminate begins to give.',
    ],
    unanswered: [],
  };
}
