/** Faces of the one family: rank by width before size. */
export const FACES = ['text', 'strong', 'narrow', 'figure', 'title'] as const;
export type Face = (typeof FACES)[number];

/** A font file's alphabets: what the first lacks is looked for in the second. */
export const ALPHABETS = ['latin', 'latin-ext'] as const;
export type Alphabet = (typeof ALPHABETS)[number];

export interface FaceFile {
  /** Folder of the font package. */
  readonly family: 'encode-sans' | 'encode-sans-semi-condensed' | 'encode-sans-semi-expanded';
  readonly weight: 400 | 500 | 600;
  /** Width of the letters, %. */
  readonly stretch: 87.5 | 100 | 112.5;
}

export const faceFiles: Readonly<Record<Face, FaceFile>> = {
  text: { family: 'encode-sans', weight: 400, stretch: 100 },
  strong: { family: 'encode-sans', weight: 600, stretch: 100 },
  narrow: { family: 'encode-sans-semi-condensed', weight: 400, stretch: 87.5 },
  figure: { family: 'encode-sans-semi-condensed', weight: 500, stretch: 87.5 },
  title: { family: 'encode-sans-semi-expanded', weight: 600, stretch: 112.5 },
};

/** A way of setting text. */
export interface Style {
  readonly face: Face;
  /** Size, points. */
  readonly size: number;
  /** Line to line, mm. */
  readonly line: number;
}

/** Nothing under 8 points; values at 10. */
export const styles = {
  page: { face: 'title', size: 16, line: 7 },
  section: { face: 'title', size: 10.5, line: 5 },
  text: { face: 'text', size: 9, line: 4.3 },
  strong: { face: 'strong', size: 9, line: 4.3 },
  value: { face: 'strong', size: 10, line: 4.6 },
  small: { face: 'narrow', size: 8, line: 3.7 },
  label: { face: 'figure', size: 8, line: 3.7 },
} as const satisfies Readonly<Record<string, Style>>;

export type StyleName = keyof typeof styles;

export const MM_PER_POINT = 25.4 / 72;
