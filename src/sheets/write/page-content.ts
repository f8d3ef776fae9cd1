import type { FontFile, Lettering, Run, SetGlyph } from '../lettering/lettering.ts';
import { MM_PER_POINT } from '../lettering/styles.ts';
import type { Mark, OutlineMark, Paint, TextMark } from '../marks/mark.ts';
import type { Outline } from '../marks/outline.ts';
import type { Paper } from '../page/paper.ts';
import { glyphsHex } from './embed-font.ts';
import { figure } from './figures.ts';

/** Fonts in use, with the glyphs taken from each and the name each goes by in the pages. */
export class UsedFonts {
  readonly fonts = new Map<
    string,
    { readonly file: FontFile; readonly name: string; readonly glyphs: Map<number, SetGlyph> }
  >();

  use({ file, glyphs }: Run): string {
    let found = this.fonts.get(file.key);
    if (found === undefined) {
      found = { file, name: `F${this.fonts.size + 1}`, glyphs: new Map() };
      this.fonts.set(file.key, found);
    }
    for (const glyph of glyphs) found.glyphs.set(glyph.id, glyph);
    return found.name;
  }
}

const GREY: Readonly<Record<Paint, string>> = { black: '0', white: '1' };
const OPERATORS = { M: 'm', L: 'l', C: 'c', Z: 'h' } as const;

/** Page content (ISO 32000-1, 8 and 9) in points, from marks in mm. */
export class PageContent {
  readonly #lettering: Lettering;
  readonly #height: number;
  readonly #fonts: UsedFonts;
  readonly #out: string[] = [];

  constructor(paper: Paper, lettering: Lettering, fonts: UsedFonts) {
    this.#lettering = lettering;
    this.#height = paper.height;
    this.#fonts = fonts;
  }

  add(mark: Mark): void {
    if (mark.clip !== undefined) this.#out.push('q', this.#path(mark.clip), 'W n');
    if (mark.kind === 'text') this.#text(mark);
    else this.#outline(mark);
    if (mark.clip !== undefined) this.#out.push('Q');
  }

  toString(): string {
    return this.#out.join('\n');
  }

  #path(outline: Outline): string {
    return outline
      .map(([command, ...numbers]) => {
        const points = numbers.map((it, i) => figure((i % 2 === 0 ? it : this.#height - it) / MM_PER_POINT));
        return [...points, OPERATORS[command]].join(' ');
      })
      .join('\n');
  }

  #outline({ outline, line, dash, fill }: OutlineMark): void {
    if (line === 0 && fill === undefined) return;
    const setup: string[] = [];
    if (fill !== undefined) setup.push(`${GREY[fill]} g`);
    if (line > 0)
      setup.push(
        `0 G ${figure(line / MM_PER_POINT)} w [${(dash ?? []).map((it) => figure(it / MM_PER_POINT)).join(' ')}] 0 d`,
      );
    this.#out.push(...setup, this.#path(outline), fill === undefined ? 'S' : line > 0 ? 'B' : 'f');
  }

  #text({ x, y, text, style, width, paint }: TextMark): void {
    const natural = this.#lettering.width(text, style);
    if (text === '' || natural === 0) return;
    const squeeze = width / natural;
    this.#out.push('BT', `${GREY[paint]} g ${figure(squeeze * 100)} Tz`);
    let at = x;
    for (const run of this.#lettering.runs(text, style.face)) {
      this.#out.push(
        `/${this.#fonts.use(run)} ${figure(style.size)} Tf`,
        `1 0 0 1 ${figure(at / MM_PER_POINT)} ${figure((this.#height - y) / MM_PER_POINT)} Tm`,
        `[${shown(run.glyphs)}] TJ`,
      );
      at += (run.glyphs.reduce((sum, it) => sum + it.step, 0) / 1000) * style.size * MM_PER_POINT * squeeze;
    }
    this.#out.push('ET');
  }
}

/** Glyphs with the kerning between them: what a step falls short of a glyph's own width is taken back. */
function shown(glyphs: readonly SetGlyph[]): string {
  const parts: string[] = [];
  let open: SetGlyph[] = [];
  for (const glyph of glyphs) {
    open.push(glyph);
    const back = glyph.advance - glyph.step;
    if (Math.abs(back) < 0.05) continue;
    parts.push(glyphsHex(open), figure(back));
    open = [];
  }
  if (open.length > 0) parts.push(glyphsHex(open));
  return parts.join(' ');
}
