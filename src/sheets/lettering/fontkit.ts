import * as fontkit from '@pdf-lib/fontkit';

/** The little of a font that is used here; the package's own types are for an older module style. */
export interface Font {
  readonly postscriptName: string;
  readonly unitsPerEm: number;
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly italicAngle: number;
  readonly bbox: {
    readonly minX: number;
    readonly minY: number;
    readonly maxX: number;
    readonly maxY: number;
  };
  hasGlyphForCodePoint(code: number): boolean;
  layout(
    text: string,
    features: Readonly<Record<string, boolean>>,
  ): {
    readonly glyphs: readonly {
      readonly id: number;
      readonly codePoints: readonly number[];
      readonly advanceWidth: number;
    }[];
    readonly positions: readonly { readonly xAdvance: number }[];
  };
}

interface Module {
  create(bytes: Uint8Array): Font;
}

const module = fontkit as unknown as Module & { readonly default?: Module };

/** Reads a TrueType font. Throws when the bytes are none. */
export const create = (bytes: Uint8Array): Font => (module.default ?? module).create(bytes);
