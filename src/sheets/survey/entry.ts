import type { Scene } from '../../drawings/scene.ts';
import type { Units } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { formatLength } from '../../units/format-length.ts';
import { formatNumber } from '../../units/format-number.ts';
import { formatValue } from '../../units/format-value.ts';
import { styles } from '../lettering/styles.ts';
import { LINE } from '../marks/mark.ts';
import { drawing } from '../page/drawing.ts';
import { BLANK, type Sheet, TICK } from '../page/sheet.ts';

/** Sizes of one entry of the form, mm. */
const NUMBER = 7;
const GAP = 4;
const BLANKS = 52;

export interface EntryLook {
  /** Width of the picture, mm; its height is five eighths of that. */
  readonly picture: number;
  /** Least height, mm. */
  readonly least: number;
}

export const LARGE: EntryLook = { picture: 38, least: 25 };
/** Without a picture. */
export const BARE: EntryLook = { picture: 0, least: 11 };
export const SMALL: EntryLook = { picture: 27, least: 18 };

const ASPECT = 1.6;

export interface Entry {
  readonly number: number;
  readonly cell: InputCell;
  readonly picture: Scene | null;
}

/** The unit to write in, as it stands behind a blank. */
export const blankUnit = (unit: string, units: Units): string =>
  unit === 'mm' ? (units === 'both' ? 'mm or in' : units) : unit === 'deg' ? '°' : unit === '–' ? '' : unit;

/** What a reading's ± is taken to be when the blank for it stays empty. */
const usualOffBy = ({ off_by, unit }: InputCell, units: Units): string =>
  off_by === 0 || (unit !== 'mm' && unit !== 'deg')
    ? ''
    : `else ± ${unit === 'mm' ? formatLength(off_by, { unit: units === 'in' ? 'in' : 'mm' }) : formatNumber(off_by, unit)}`;

const textWidth = (width: number, { picture }: EntryLook): number =>
  width - NUMBER - picture - BLANKS - 2 * GAP;

/** A yes or no is ticked on paper, where the workbook takes TRUE or FALSE. */
const helpOf = (cell: InputCell): string => `${wordsFor(cell)}${takenFor(cell)}`;

/** What is taken for an assumed value that nobody writes down. */
const takenFor = ({ where, type, value, unit }: InputCell): string =>
  where === 'assumed' && type === 'number' && typeof value === 'number'
    ? ` Left empty, ${formatValue(value, unit, { unit: 'mm' })} is taken.`
    : '';

const wordsFor = ({ type, help }: InputCell): string =>
  type === 'flag'
    ? help
        .replace(/(^|[.;:] )TRUE/g, '$1Yes')
        .replace(/(^|[.;:] )FALSE/g, '$1No')
        .replaceAll('TRUE', 'yes')
        .replaceAll('FALSE', 'no')
    : help;

export function entryHeight(sheet: Sheet, { cell }: Entry, width: number, look: EntryLook): number {
  const room = textWidth(width, look);
  const words = sheet.textHeight(cell.label, room, 'strong') + sheet.textHeight(helpOf(cell), room, 'small');
  return Math.max(look.least, words + 1, cell.type === 'word' ? (cell.words?.length ?? 0) * 6.5 : 0) + 3;
}

const wordsOf = ({ type, words }: InputCell): readonly string[] | undefined =>
  type === 'flag' ? ['yes', 'no'] : type === 'word' ? words : undefined;

function ticks(sheet: Sheet, words: readonly string[], x: number, y: number): void {
  for (const [i, word] of words.entries()) {
    sheet.tick(x, y + i * 6.5);
    sheet.text(word, x + TICK + 2, y + i * 6.5 + 0.3, { style: 'text' });
  }
}

function blanks(sheet: Sheet, cell: InputCell, x: number, y: number, units: Units): void {
  const words = wordsOf(cell);
  if (words !== undefined) {
    ticks(sheet, words, x, y + 1);
    return;
  }
  const [value, gap] = [31, 3];
  sheet.blank(x, y - 1, value, blankUnit(cell.unit, units));
  const aside = x + value + gap;
  if (cell.type === 'number') {
    sheet.text('±', aside, y + BLANK - 1 - styles.text.line, { style: 'text' });
    sheet.line(aside + 3, y + BLANK - 1, x + BLANKS, y + BLANK - 1);
  }
  sheet.text(usualOffBy(cell, units), x + BLANKS, y + BLANK - 0.4, { style: 'small', align: 'right' });
  const tool = cell.tool === undefined || cell.tool === 'none' ? '' : cell.tool;
  sheet.text(tool === '' ? 'with' : `with: ${tool}, or`, x, y + BLANK - 0.4, { style: 'small' });
}

/** One reading: its number, a picture of where it is taken, how, and blanks for the value and how far it may be off. */
export function entry(
  sheet: Sheet,
  it: Entry,
  x: number,
  y: number,
  width: number,
  look: EntryLook,
  units: Units,
): void {
  const { number, cell, picture } = it;
  const height = entryHeight(sheet, it, width, look);
  sheet.text(String(number), x, y + 0.6, { style: 'value' });
  const left = x + NUMBER;
  if (picture !== null && look.picture > 0) {
    const area = { x: left, y: y + 1, width: look.picture, height: look.picture / ASPECT };
    drawing(sheet, picture, area, []);
    sheet.rect(area.x, area.y, area.width, area.height, { line: LINE.axis });
  }
  const words = left + look.picture + GAP;
  const room = textWidth(width, look);
  const under = sheet.text(cell.label, words, y + 0.6, { style: 'strong', width: room });
  sheet.text(helpOf(cell), words, under, { style: 'small', width: room });
  blanks(sheet, cell, x + width - BLANKS, y, units);
  sheet.line(x, y + height - 0.5, x + width, y + height - 0.5, { line: LINE.axis });
}
