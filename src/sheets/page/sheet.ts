import type { Lettering } from '../lettering/lettering.ts';
import { MM_PER_POINT, type Style, type StyleName, styles } from '../lettering/styles.ts';
import { LINE, type Mark, type OutlineMark, type Paint, type TextMark } from '../marks/mark.ts';
import { circle, type Outline, type Place, rectangle, straight } from '../marks/outline.ts';
import { type Area, type Paper, printable } from './paper.ts';
import { TITLE_BLOCK } from './title-block-height.ts';

export interface TextOptions {
  readonly style?: StyleName | Style;
  /** What `x` is of the text. */
  readonly align?: 'left' | 'middle' | 'right';
  /** Breaks the text into lines no wider than this, mm. */
  readonly width?: number;
  readonly paint?: Paint;
}

export interface LineOptions {
  /** Width of the line, mm; 0.25 unless given. */
  readonly line?: number;
  readonly dash?: readonly number[];
}

export interface ShapeOptions extends LineOptions {
  readonly fill?: Paint;
}

/** Height of a ruled blank and side of a tick square, mm. */
export const BLANK = 8;
export const TICK = 5;

/** Cap height over size of the family: text stands with its capitals in the middle of its line. */
const CAPITALS = 0.74;

export const styleOf = (style: StyleName | Style): Style =>
  typeof style === 'string' ? styles[style] : style;

/** How far under a line's top its baseline lies, mm. */
export const baseline = ({ size, line }: Style): number => (line + CAPITALS * size * MM_PER_POINT) / 2;

/**
 * One printed page. Everything is in mm from the page's top left corner, y down; text is given by the top of its first
 * line. Stay inside `area`: the title block stands below it. Calls that set text give back the y under it, so that the
 * next thing can be put there.
 *
 *     const sheet = printout.sheet();
 *     let y = sheet.text('Cut list', sheet.area.x, sheet.area.y, { style: 'page' });
 *     y = sheet.text(longSentence, sheet.area.x, y + 2, { width: sheet.area.width });
 *     sheet.rect(20, y, 100, 40, { line: LINE.outline });
 *
 * Tables, drawings, ruled blanks, scale bars and limit marks are functions beside it that take the sheet first.
 */
export class Sheet {
  readonly paper: Paper;
  readonly lettering: Lettering;
  area: Area;
  readonly marks: Mark[] = [];
  /** What the title block says of scale, as in `1:10`; absent: not to scale. */
  scale: string | undefined;

  constructor(paper: Paper, lettering: Lettering) {
    this.paper = paper;
    this.lettering = lettering;
    const all = printable(paper);
    this.area = { ...all, height: all.height - TITLE_BLOCK };
  }

  get bottom(): number {
    return this.area.y + this.area.height;
  }

  get right(): number {
    return this.area.x + this.area.width;
  }

  /** Sets a text, and gives back the y under its last line. */
  text(text: string, x: number, y: number, options: TextOptions = {}): number {
    const style = styleOf(options.style ?? 'text');
    const lines =
      options.width === undefined ? text.split('\n') : this.lettering.lines(text, style, options.width);
    for (const [i, line] of lines.entries()) {
      const width = this.lettering.width(line, style);
      const back = options.align === 'right' ? width : options.align === 'middle' ? width / 2 : 0;
      this.put({
        kind: 'text',
        x: x - back,
        y: y + i * style.line + baseline(style),
        text: line,
        style: { face: style.face, size: style.size },
        width,
        paint: options.paint ?? 'black',
      });
    }
    return y + lines.length * style.line;
  }

  /** Height a text takes, mm. */
  textHeight(text: string, width: number, style: StyleName | Style = 'text'): number {
    return this.lettering.lines(text, styleOf(style), width).length * styleOf(style).line;
  }

  line(x1: number, y1: number, x2: number, y2: number, options: LineOptions = {}): void {
    this.lines(
      [
        [x1, y1],
        [x2, y2],
      ],
      options,
    );
  }

  /** A line through places. */
  lines(places: readonly Place[], options: LineOptions = {}): void {
    this.outline(straight(places), options);
  }

  /** A closed shape through places. */
  polygon(places: readonly Place[], options: ShapeOptions = {}): void {
    this.outline(straight(places, true), options);
  }

  rect(x: number, y: number, width: number, height: number, options: ShapeOptions = {}): void {
    this.outline(rectangle(x, y, width, height), options);
  }

  circle(x: number, y: number, r: number, options: ShapeOptions = {}): void {
    this.outline(circle(x, y, r), options);
  }

  outline(outline: Outline, { line = LINE.thin, dash, fill }: ShapeOptions = {}, clip?: Outline): void {
    const mark: OutlineMark = {
      kind: 'outline',
      outline,
      line,
      ...(dash === undefined ? {} : { dash }),
      ...(fill === undefined ? {} : { fill }),
      ...(clip === undefined ? {} : { clip }),
    };
    this.put(mark);
  }

  /** A square to tick, 5 mm. */
  tick(x: number, y: number): void {
    this.rect(x, y, TICK, TICK);
  }

  /** A ruled blank to write in: the rule lies 8 mm under `y`. A unit may stand at its right end. */
  blank(x: number, y: number, width: number, unit = ''): void {
    this.line(x, y + BLANK, x + width, y + BLANK);
    if (unit !== '')
      this.text(unit, x + width - 0.5, y + BLANK - styles.small.line - 0.4, {
        style: 'small',
        align: 'right',
      });
  }

  put(mark: OutlineMark | TextMark): void {
    this.marks.push(mark);
  }
}
