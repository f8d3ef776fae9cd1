import { create, type Font } from './fontkit.ts';
import { ALPHABETS, type Alphabet, FACES, type Face, MM_PER_POINT, type Style } from './styles.ts';
import { fontOfWoff } from './woff.ts';

/** One font file, ready to measure with and to embed. */
export interface FontFile {
  readonly key: string;
  readonly bytes: Uint8Array;
  readonly font: Font;
}

export interface SetGlyph {
  readonly id: number;
  readonly text: string;
  /** Own width, and the step to the next letter, kerning included; thousandths of the size. */
  readonly advance: number;
  readonly step: number;
}

/** Letters set from one file. */
export interface Run {
  readonly file: FontFile;
  readonly glyphs: readonly SetGlyph[];
}

/** Gives a font file as it lies in the font package, for instance from disk or by fetching. */
export type LoadFace = (face: Face, alphabet: Alphabet) => Promise<Uint8Array<ArrayBuffer>>;

/** Figures of one width, so that columns line up. */
const FEATURES = { tnum: true } as const;

/** Stands for a letter that the family does not have. */
const MISSING = '?';

const split = (text: string): string[] => [...text];

/** The faces, loaded: measures text and breaks it into lines. Loading is the only thing here that waits. */
export class Lettering {
  readonly #files: ReadonlyMap<Face, readonly FontFile[]>;
  readonly #runs = new Map<string, readonly Run[]>();

  constructor(files: ReadonlyMap<Face, readonly FontFile[]>) {
    this.#files = files;
  }

  static async load(load: LoadFace): Promise<Lettering> {
    const entries = FACES.map(async (face): Promise<[Face, readonly FontFile[]]> => {
      const files = ALPHABETS.map(async (alphabet): Promise<FontFile> => {
        const bytes = await fontOfWoff(await load(face, alphabet));
        return { key: `${face}-${alphabet}`, bytes, font: create(bytes) };
      });
      return [face, await Promise.all(files)];
    });
    return new Lettering(new Map(await Promise.all(entries)));
  }

  /** Whether the family has every letter of a text. */
  has(text: string): boolean {
    return split(text).every((letter) => this.#fileFor('text', letter) !== undefined);
  }

  /** A text as letters from the files that have them. */
  runs(text: string, face: Face): readonly Run[] {
    const key = `${face} ${text}`;
    const known = this.#runs.get(key);
    if (known !== undefined) return known;
    const runs: Run[] = [];
    let open = '';
    let file: FontFile | undefined;
    for (const letter of split(text)) {
      const its = this.#fileFor(face, letter);
      if (file !== undefined && its !== file && open !== '') {
        runs.push(set(open, file));
        open = '';
      }
      file = its ?? this.#files.get(face)?.[0];
      open += its === undefined ? MISSING : letter;
    }
    if (file !== undefined && open !== '') runs.push(set(open, file));
    this.#runs.set(key, runs);
    return runs;
  }

  /** Width of one line, mm. */
  width(text: string, { face, size }: Pick<Style, 'face' | 'size'>): number {
    let sum = 0;
    for (const run of this.runs(text, face)) for (const glyph of run.glyphs) sum += glyph.step;
    return (sum / 1000) * size * MM_PER_POINT;
  }

  /** A text broken into lines no wider than `width`, mm; a word that is wider is broken inside. */
  lines(text: string, style: Style, width: number): readonly string[] {
    return text.split('\n').flatMap((paragraph) => this.#broken(paragraph, style, width));
  }

  /** Adds up words, which are met again and again, rather than measuring every beginning of every line. */
  #broken(text: string, style: Style, width: number): string[] {
    const lines: string[] = [];
    const space = this.width(' ', style);
    let line = '';
    let long = 0;
    for (const word of text.split(' ')) {
      const its = this.width(word, style);
      const longer = line === '' ? its : long + space + its;
      if (longer <= width) {
        line = line === '' ? word : `${line} ${word}`;
        long = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      const parts = its <= width ? [word] : this.#parts(word, style, width);
      lines.push(...parts.slice(0, -1));
      line = parts.at(-1) ?? '';
      long = this.width(line, style);
    }
    return [...lines, line];
  }

  /** A word in pieces no wider than a line. */
  #parts(word: string, style: Style, width: number): string[] {
    const parts: string[] = [];
    let part = '';
    for (const letter of split(word)) {
      if (part !== '' && this.width(part + letter, style) > width) {
        parts.push(part);
        part = '';
      }
      part += letter;
    }
    return [...parts, part];
  }

  #fileFor(face: Face, letter: string): FontFile | undefined {
    const code = letter.codePointAt(0) ?? 0;
    return this.#files.get(face)?.find((it) => it.font.hasGlyphForCodePoint(code));
  }
}

function set(text: string, file: FontFile): Run {
  const scale = 1000 / file.font.unitsPerEm;
  const { glyphs, positions } = file.font.layout(text, FEATURES);
  return {
    file,
    glyphs: glyphs.map((glyph, i) => ({
      id: glyph.id,
      text: String.fromCodePoint(...glyph.codePoints),
      advance: glyph.advanceWidth * scale,
      step: (positions[i]?.xAdvance ?? glyph.advanceWidth) * scale,
    })),
  };
}
