import { type PDFContext, PDFHexString, PDFName, type PDFRef, PDFString } from '@cantoo/pdf-lib';
import type { FontFile, SetGlyph } from '../lettering/lettering.ts';

const hex = (value: number): string => value.toString(16).toUpperCase().padStart(4, '0');

/** UTF-16, big-endian, as hexadecimal. */
const unicodeHex = (text: string): string =>
  Array.from({ length: text.length }, (_, i) => hex(text.charCodeAt(i))).join('');

/** Says which text each glyph stands for, so that a reader can find and copy it (ISO 32000-1, 9.10.3). */
function unicodeMap(glyphs: readonly SetGlyph[]): string {
  const parts: string[] = [];
  for (let i = 0; i < glyphs.length; i += 100) {
    const some = glyphs.slice(i, i + 100);
    parts.push(`${some.length} beginbfchar`);
    parts.push(...some.map(({ id, text }) => `<${hex(id)}> <${unicodeHex(text)}>`), 'endbfchar');
  }
  return [
    '/CIDInit /ProcSet findresource begin 12 dict begin begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def /CMapType 2 def',
    '1 begincodespacerange <0000> <FFFF> endcodespacerange',
    ...parts,
    'endcmap CMapName currentdict /CMap defineresource pop end end',
  ].join('\n');
}

/**
 * Embeds a font whole, with the widths and texts of the glyphs that are used. The library's own way knows only the
 * glyphs that a letter starts as, and so loses tabular figures and the figures of fractions.
 */
export function embedFont(
  context: PDFContext,
  { font, bytes, key }: FontFile,
  used: Iterable<SetGlyph>,
): PDFRef {
  const glyphs = [...used].sort((a, b) => a.id - b.id);
  const scale = 1000 / font.unitsPerEm;
  const name = PDFName.of(`${font.postscriptName}-${key}`);
  const { minX, minY, maxX, maxY } = font.bbox;
  const descriptor = context.register(
    context.obj({
      Type: 'FontDescriptor',
      FontName: name,
      Flags: 32,
      FontBBox: [minX, minY, maxX, maxY].map((it) => Math.round(it * scale)),
      ItalicAngle: font.italicAngle,
      Ascent: Math.round(font.ascent * scale),
      Descent: Math.round(font.descent * scale),
      CapHeight: Math.round(font.capHeight * scale),
      StemV: 80,
      FontFile2: context.register(context.flateStream(bytes, { Length1: bytes.length })),
    }),
  );
  const descendant = context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'CIDFontType2',
      CIDToGIDMap: 'Identity',
      BaseFont: name,
      CIDSystemInfo: {
        Registry: PDFString.of('Adobe'),
        Ordering: PDFString.of('Identity'),
        Supplement: 0,
      },
      FontDescriptor: descriptor,
      DW: 500,
      W: glyphs.flatMap(({ id, advance }) => [id, [advance]]),
    }),
  );
  return context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: name,
      Encoding: 'Identity-H',
      DescendantFonts: [descendant],
      ToUnicode: context.register(context.flateStream(unicodeMap(glyphs))),
    }),
  );
}

/** Glyphs as a hexadecimal string. */
export const glyphsHex = (glyphs: readonly SetGlyph[]): string =>
  PDFHexString.of(glyphs.map(({ id }) => hex(id)).join('')).toString();
