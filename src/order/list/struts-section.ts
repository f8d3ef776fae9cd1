import type { OrderGiven, OrderSection, OrderTable } from '../section.ts';
import { type StrutNest, whyNotNested } from '../strut-nest.ts';
import { type StrutOrder, strutOrder } from '../struts.ts';
import { length, together } from '../words.ts';
import { strutNotes } from './strut-notes.ts';

const restsOn = [
  ...['strut_supply_length', 'strut_supply_count', 'saw_kerf', 'strut_end_allowance', 'strut_trial_extra'],
  ...['foot_standoff', 'pin_forward', 'pin_half_width', 'lower_reach'],
];

type Words = (mm: number) => string;

function leadOf({ stock, nest, tube }: StrutOrder, l: Words): string {
  const size = tube === undefined ? '' : `, ${l(tube.od)} outside, wall ${l(tube.wall)}`;
  const fewest = nest === undefined ? '.' : ': the fewest tubes that will do.';
  return `Cut from ${stock.supplied === 0 ? 'tubes' : 'the tubes supplied'}, ${l(stock.supply)} long${size}${fewest}`;
}

const piecesTable = ({ pieces }: StrutOrder, l: Words): OrderTable => ({
  heads: [{ text: 'Piece' }, { text: 'Cut to', figure: true }, { text: 'Trial tube', figure: true }],
  rows: pieces.filter((it) => it.cut > 0).map(({ name, cut, trial }) => [name, l(cut), l(trial)]),
});

const tubesTable = ({ tubes }: StrutNest, l: Words): OrderTable => ({
  heads: [
    { text: 'Tube' },
    { text: 'Cut from it, in this order', share: 2 },
    { text: 'Left over', figure: true },
  ],
  rows: tubes.map(({ pieces, left }, i) => [
    `Tube ${i + 1}`,
    pieces.join(', ').replace(/, S/, ', s'),
    left > 0 ? l(left) : 'nothing',
  ]),
});

export function strutsSection({ ask, units }: OrderGiven): OrderSection {
  const it = strutOrder(ask);
  const l = (mm: number): string => together(length(mm, units));
  if (typeof it === 'string')
    return {
      title: 'Struts',
      lead: 'Cut from the tubes supplied.',
      tables: [],
      notes: [],
      unanswered: [it],
      restsOn,
    };
  return {
    title: 'Struts',
    lead: leadOf(it, l),
    tables: [piecesTable(it, l), ...(it.nest === undefined ? [] : [tubesTable(it.nest, l)])],
    notes: strutNotes(it, l),
    unanswered: whyNotNested(it.pieces, it.stock, l),
    restsOn,
  };
}
