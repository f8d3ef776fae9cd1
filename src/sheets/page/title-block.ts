import { CAUTION } from '../../plan/caution.ts';
import { LINE } from '../marks/mark.ts';
import type { PrintFacts } from './print-facts.ts';
import type { Sheet } from './sheet.ts';
import { TITLE_BLOCK } from './title-block-height.ts';

/** Space between what a sheet shows and its title block, mm. */
const GAP = 3;
const ROW = 9;

/** Shares of the width of the first row's fields. */
const FIELDS = [0.29, 0.24, 0.13, 0.1, 0.24];

const standInWords = (count: number): string =>
  count === 0 ? 'Rests on no stand-ins' : `Rests on ${count} stand-in${count === 1 ? '' : 's'}`;

/** A text shortened until it fits on one line. */
function fitted(sheet: Sheet, text: string, width: number): string {
  if (sheet.lettering.width(text, { face: 'strong', size: 9 }) <= width) return text;
  let kept = text;
  while (kept !== '' && sheet.lettering.width(`${kept.trimEnd()}…`, { face: 'strong', size: 9 }) > width)
    kept = [...kept].slice(0, -1).join('');
  return `${kept.trimEnd()}…`;
}

/** The block at the foot: whose sheet this is, what it rests on, and the cautions. */
export function titleBlock(sheet: Sheet, facts: PrintFacts, number: number, of: number): void {
  const { x, width } = sheet.area;
  const top = sheet.bottom + GAP;
  const height = TITLE_BLOCK - GAP;
  sheet.rect(x, top, width, height, { line: LINE.outline });
  const fields = [
    ['Plan', facts.plan],
    ['Scenario', facts.scenario ?? 'Base values'],
    ['Date', facts.date],
    ['Scale', sheet.scale ?? 'none'],
    ['Sheet', `${number} of ${of}, ${facts.name}`],
  ] as const;
  let left = x;
  for (const [i, [label, text]] of fields.entries()) {
    const its = width * (FIELDS[i] ?? 0);
    if (i > 0) sheet.line(left, top, left, top + ROW);
    sheet.text(label, left + 1.5, top + 0.6, { style: 'small' });
    sheet.text(fitted(sheet, text, its - 3), left + 1.5, top + 4.1, { style: 'strong' });
    left += its;
  }
  sheet.line(x, top + ROW, x + width, top + ROW);
  const second = top + ROW + 1;
  sheet.text(standInWords(facts.standIns), x + 1.5, second, { style: 'strong' });
  sheet.text(`Lengths in mm and inches, 1 in = 25.4 mm. ${facts.version}`, x + width - 1.5, second + 0.3, {
    style: 'small',
    align: 'right',
  });
  sheet.line(x, second + 5.2, x + width, second + 5.2);
  sheet.text(
    `${CAUTION} Holes through a hull, power tools and loads at sea can hurt people and sink boats.`,
    x + 1.5,
    second + 6.2,
    {
      style: 'small',
      width: width - 3,
    },
  );
}
