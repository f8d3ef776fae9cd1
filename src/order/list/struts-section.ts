import type { OrderGiven, OrderSection } from '../section.ts';
import { type StrutOrder, strutOrder } from '../struts.ts';
import { counted, length } from './words.ts';

const restsOn = [
  ...['strut_supply_length', 'strut_supply_count', 'saw_kerf', 'strut_end_allowance', 'strut_trial_extra'],
  ...['foot_standoff', 'pin_forward', 'pin_half_width', 'lower_reach'],
];

function notesOf(it: StrutOrder, l: (mm: number) => string): string[] {
  const used = it.tubes.length;
  const notes: string[] = [];
  if (it.spare < 0)
    notes.push(
      `${counted(used, 'tube is', 'tubes are')} needed and ${counted(it.supplied, 'is', 'are')} supplied: ${counted(-it.spare, 'more is', 'more are')} to be ordered.`,
    );
  if (used === 1 && it.supplied > 1)
    notes.push(
      `One tube is enough for ${it.pieces.length === 1 ? 'the strut' : 'both struts'}. Mark which one you cut and leave the rest whole until the struts are fitted.`,
    );
  if (it.spare > 0) notes.push(`Left whole: ${counted(it.spare, 'tube')} of ${l(it.supply)}.`);
  notes.push(
    'Make trial tubes of anything straight that fits the ends. Cut the struts themselves only from what the trial tubes say once the feet are drilled: cut long, try, trim.',
    `Each cut takes ${l(it.kerf)}; a rest shorter than that goes to the saw.`,
  );
  return notes;
}

export function strutsSection({ ask, units }: OrderGiven): OrderSection {
  const it = strutOrder(ask);
  const l = (mm: number): string => length(mm, units);
  const isKnown = typeof it !== 'string';
  const tube = isKnown && it.tube !== undefined ? `${l(it.tube.od)} outside, wall ${l(it.tube.wall)}` : '';
  return {
    title: 'Struts',
    lead: isKnown
      ? `Cut from the tubes supplied, ${l(it.supply)} long${tube === '' ? '' : `, ${tube}`}: the fewest tubes that will do.`
      : 'Cut from the tubes supplied.',
    tables: isKnown
      ? [
          {
            heads: [
              { text: 'Piece' },
              { text: 'Cut to', figure: true },
              { text: 'Trial tube', figure: true },
            ],
            rows: it.pieces.map((piece) => [piece.name, l(piece.cut), l(piece.trial)]),
          },
          {
            heads: [
              { text: 'Tube' },
              { text: 'Cut from it, in this order', share: 2 },
              { text: 'Left over', figure: true },
            ],
            rows: it.tubes.map((piece, i) => [
              `Tube ${i + 1}`,
              piece.pieces.join(', ').replace(/, S/, ', s'),
              l(piece.left),
            ]),
          },
        ]
      : [],
    notes: isKnown ? notesOf(it, l) : [],
    unanswered: isKnown ? [] : [it],
    restsOn,
  };
}
