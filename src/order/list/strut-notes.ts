import type { StrutNest, TubeStock } from '../strut-nest.ts';
import type { StrutPiece } from '../strut-piece.ts';
import type { StrutOrder } from '../struts.ts';
import { counted } from '../words.ts';

type Words = (mm: number) => string;

function tubeNotes(
  { tubes, spare, longTubes }: StrutNest,
  { supply, supplied }: TubeStock,
  l: Words,
  struts: string,
) {
  const used = tubes.length;
  const notes: string[] = [];
  if (supplied === 0)
    notes.push(`No tube is supplied: ${used} of ${l(supply)} ${used === 1 ? 'is' : 'are'} to be ordered.`);
  else if (spare < 0)
    notes.push(
      `${counted(used, 'tube is', 'tubes are')} needed and ${counted(supplied, 'is', 'are')} supplied: ${counted(-spare, 'more is', 'more are')} to be ordered.`,
    );
  // Not where the same struts, first cut long, take a tube more.
  if (longTubes === 1 && supplied > 1)
    notes.push(
      `One tube is enough for ${struts}. Mark which one you cut and leave the rest whole until the struts are fitted.`,
    );
  if (spare > 0) notes.push(`Left whole: ${counted(spare, 'tube')} of ${l(supply)}.`);
  return notes;
}

/** What cutting long at first takes: it may need a tube more than the plan by trimmed lengths. */
function longNote({ tubes, longTubes }: StrutNest, pieces: readonly StrutPiece[], l: Words): string[] {
  const extra = Math.max(...pieces.map((it) => it.trial - it.cut));
  if (longTubes === undefined)
    return [`Cut ${l(extra)} long, a strut is longer than a tube: there is no second try.`];
  if (longTubes <= tubes.length) return [];
  return [
    `Cut ${l(extra)} long, to be trimmed, they take ${counted(longTubes, 'tube')}, not ${tubes.length}.`,
  ];
}

const TRIAL = 'Make trial tubes of anything straight that fits the ends.';

function trialNote({ withTrial }: StrutNest, { supply, supplied }: TubeStock, l: Words): string {
  if (withTrial === undefined) return `${TRIAL} A tube of ${l(supply)} is too short for them.`;
  if (withTrial > supplied)
    return `${TRIAL} From tubes of ${l(supply)}, struts and trial tubes together would take ${withTrial}; ${counted(supplied, 'is', 'are').replace(/^0/, 'none')} supplied.`;
  return `${TRIAL} They can come from the tubes supplied: struts and trial tubes together take ${withTrial} of the ${supplied}.`;
}

/** What whoever cuts the struts must know. */
export function strutNotes({ pieces, stock, nest }: StrutOrder, l: Words): string[] {
  if (pieces.every((it) => !(it.cut > 0))) return [];
  const last =
    'Cut the struts themselves only from what the trial tubes say once the feet are drilled: cut long, try, trim.';
  if (nest === undefined) return [TRIAL, last];
  const saw = `Each cut takes ${l(stock.kerf)}; a rest shorter than that goes to the saw.`;
  return [
    ...tubeNotes(nest, stock, l, pieces.length === 1 ? 'the strut' : 'both struts'),
    ...longNote(nest, pieces, l),
    trialNote(nest, stock, l),
    last,
    ...(stock.kerf > 0 ? [saw] : []),
  ];
}
