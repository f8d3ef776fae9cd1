import { faceFiles, MM_PER_POINT } from '../lettering/styles.ts';
import type { Mark } from '../marks/mark.ts';
import type { Outline } from '../marks/outline.ts';
import type { Sheet } from '../page/sheet.ts';
import { figure } from './figures.ts';

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (letter) => escapes[letter] ?? letter);

const pathOf = (outline: Outline): string =>
  outline.map(([command, ...numbers]) => `${command}${numbers.map(figure).join(' ')}`).join('');

function element(it: Mark): string {
  if (it.kind === 'text') {
    if (it.text === '') return '';
    const { weight, stretch } = faceFiles[it.style.face];
    return (
      `<text x="${figure(it.x)}" y="${figure(it.y)}" fill="${it.paint}" font-size="${figure(it.style.size * MM_PER_POINT)}" ` +
      `font-weight="${weight}" font-stretch="${stretch}%" textLength="${figure(it.width)}" ` +
      `lengthAdjust="spacingAndGlyphs">${escaped(it.text)}</text>`
    );
  }
  const line = it.line === 0 ? '' : ` stroke="black" stroke-width="${figure(it.line)}"`;
  const dash = it.dash === undefined ? '' : ` stroke-dasharray="${it.dash.map(figure).join(' ')}"`;
  return `<path d="${pathOf(it.outline)}" fill="${it.fill ?? 'none'}"${line}${dash}/>`;
}

/** A page as SVG text in mm, for showing; `ids` keeps the clips of several pages apart. */
export function svgOfSheet({ paper, marks }: Sheet, title: string, ids: string): string {
  const clips: string[] = [];
  const known = new Map<string, string>();
  const body = marks.map((it) => {
    if (it.clip === undefined) return element(it);
    const d = pathOf(it.clip);
    let id = known.get(d);
    if (id === undefined) {
      id = `${ids}${known.size}`;
      known.set(d, id);
      clips.push(`<clipPath id="${id}"><path d="${d}"/></clipPath>`);
    }
    return `<g clip-path="url(#${id})">${element(it)}</g>`;
  });
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${paper.width} ${paper.height}" role="img" ` +
    `font-family="'Encode Sans Variable','Encode Sans',sans-serif" font-variant="lining-nums tabular-nums">` +
    `<title>${escaped(title)}</title>${clips.length === 0 ? '' : `<defs>${clips.join('')}</defs>`}` +
    `<rect width="${paper.width}" height="${paper.height}" fill="white"/>${body.join('')}</svg>`
  );
}
