import { type Layout, type LayoutOptions, layout, type SheetBox } from '../layout/layout.ts';
import { letteringFor, type Medium } from '../layout/lettering.ts';
import type { Clip, Primitive, TextPrimitive } from '../layout/primitive.ts';
import { round } from '../layout/px.ts';
import type { Scene } from '../scene.ts';
import { penFor, textTokens } from './pens.ts';
import type { Palette } from './tokens.ts';

export interface SvgOptions extends LayoutOptions {
  /** Put before every id, so that two drawings on one page keep theirs apart. */
  readonly ids?: string;
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (letter) => escapes[letter] ?? letter);

const FAMILY = "'Encode Sans Variable','Encode Sans',sans-serif";

function textElement(it: TextPrimitive, palette: Palette, medium: Medium): string {
  const { size, weight, stretch } = letteringFor(medium)[it.style];
  // The width is part of the drawing: another typeface in its place must not run into its neighbour.
  return (
    `<text x="${it.x}" y="${it.y}" fill="${palette[textTokens[it.role]]}" font-size="${size}" font-weight="${weight}" ` +
    `font-stretch="${stretch}%" textLength="${it.width}" lengthAdjust="spacingAndGlyphs">${escaped(it.text)}</text>`
  );
}

function outlineElement(it: Exclude<Primitive, { kind: 'text' }>, palette: Palette, medium: Medium): string {
  const { stroke, fill, width, dash } = penFor(it.role, medium, it.lit === true);
  const shape =
    it.kind === 'path'
      ? `<path d="${it.d}"`
      : it.kind === 'circle'
        ? `<circle cx="${it.cx}" cy="${it.cy}" r="${it.r}"`
        : `<rect x="${it.x}" y="${it.y}" width="${it.width}" height="${it.height}"`;
  const line = stroke === null ? '' : ` stroke="${palette[stroke]}" stroke-width="${round(width)}"`;
  return (
    `${shape} class="${it.role}" fill="${fill === null ? 'none' : palette[fill]}"${line}` +
    `${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}` +
    `${it.part === undefined ? '' : ` data-part="${it.part}"`}/>`
  );
}

const clipElement = (it: Clip, ids: string): string =>
  `<clipPath id="${ids}${it.name}">${
    it.kind === 'circle'
      ? `<circle cx="${it.cx}" cy="${it.cy}" r="${it.r}"/>`
      : `<rect x="${it.x}" y="${it.y}" width="${it.width}" height="${it.height}"/>`
  }</clipPath>`;

/** SVG text of primitives that are placed already. */
export function primitivesToSvg(
  it: Pick<Layout, 'width' | 'height' | 'title' | 'primitives' | 'clips'>,
  palette: Palette,
  options: Pick<SvgOptions, 'medium' | 'ids'> = {},
): string {
  const medium = options.medium ?? 'screen';
  const ids = options.ids ?? '';
  const body: string[] = [];
  let open: string | undefined;
  for (const primitive of it.primitives) {
    if (primitive.clip !== open) {
      if (open !== undefined) body.push('</g>');
      if (primitive.clip !== undefined) body.push(`<g clip-path="url(#${ids}${primitive.clip})">`);
      open = primitive.clip;
    }
    body.push(
      primitive.kind === 'text'
        ? textElement(primitive, palette, medium)
        : outlineElement(primitive, palette, medium),
    );
  }
  if (open !== undefined) body.push('</g>');
  const clips = it.clips.map((clip) => clipElement(clip, ids)).join('');
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${it.width} ${it.height}" width="${it.width}" height="${it.height}" ` +
    `role="img" font-family="${FAMILY}" font-variant="lining-nums tabular-nums" stroke-linejoin="miter">` +
    `<title>${escaped(it.title)}</title>${clips === '' ? '' : `<defs>${clips}</defs>`}${body.join('')}</svg>`
  );
}

/** A scene as SVG text, set on a page of `box` px in the colours of `palette`. */
export function sceneToSvg(scene: Scene, box: SheetBox, palette: Palette, options: SvgOptions = {}): string {
  return primitivesToSvg(layout(scene, box, options), palette, options);
}
