import { boltOrder } from '../bolts.ts';
import { feetInUse, type Place } from '../feet.ts';
import type { OrderGiven, OrderSection, OrderTable } from '../section.ts';
import { stackOf } from '../stack.ts';
import { length } from '../words.ts';

/** What goes on each bolt, in order: the feet in use all have the same. */
export function stackSection({ ask, units }: OrderGiven): OrderSection {
  const places: readonly Place[] = ['lower', ...feetInUse(ask).slice(0, 1)];
  const unanswered: string[] = [];
  const tables = places.flatMap((place): OrderTable[] => {
    const bolt = boltOrder(ask, place);
    if (typeof bolt === 'string') {
      unanswered.push(bolt);
      return [];
    }
    const what = place === 'lower' ? 'Lower bracket’s bolts' : 'Feet’s bolts';
    return [
      {
        heads: [
          { text: what, share: 1.8 },
          { text: 'Thickness', figure: true },
        ],
        rows: stackOf(ask, bolt).map(([layer, thick]) => [
          layer,
          thick === undefined ? '' : length(thick, units),
        ]),
      },
    ];
  });
  return {
    title: 'Order of the stack, from outside to inside',
    lead: 'Lay the parts out in this order before you mix any epoxy.',
    tables,
    notes: [],
    unanswered,
    restsOn: ['flange_thickness', 'transom_thickness', 'bed_thickness', 'plate_thickness', 'foot_pad'],
  };
}
