import { extentOf, type Spot, type TemplatePart } from './part.ts';
import { partWords, placing, STOP_HEIGHT, STOP_ROOM } from './placed.ts';

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (letter) => escapes[letter] ?? letter);

const figure = (value: number): string => {
  const text = value.toFixed(4).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
};

/**
 * Templates as SVG in millimetres, true size, with one group for each thing a shop does with it. `stop`, where the plan
 * cannot be built, stands large over everything.
 */
export function svgOf(parts: readonly TemplatePart[], about: string, stop?: string): string {
  const { placed, width, height: high } = placing(parts);
  const height = stop === undefined ? high : high + STOP_ROOM;
  const said = stop === undefined ? about : `${stop} ${about}`;
  const groups = { outlines: '', holes: '', marks: '', words: '' };
  for (const { part, dx, dy } of placed) {
    const x = (spot: Spot): string => figure(spot.x + dx);
    // y runs down in SVG.
    const y = (spot: Spot): string => figure(height - spot.y - dy);
    const text = (spot: Spot, words: string): string =>
      `<text x="${x(spot)}" y="${y(spot)}">${escaped(words)}</text>`;
    for (const spots of part.outlines)
      groups.outlines += `<path d="M${spots.map((it) => `${x(it)} ${y(it)}`).join('L')}Z"/>`;
    for (const it of part.holes)
      groups.holes += `<circle cx="${x(it)}" cy="${y(it)}" r="${figure(it.diameter / 2)}"/>`;
    for (const [from, to] of part.lines)
      groups.marks += `<path d="M${x(from)} ${y(from)}L${x(to)} ${y(to)}"/>`;
    for (const it of part.words) groups.words += text(it, it.text);
    const { x0, y0 } = extentOf(part);
    groups.words += text({ x: x0, y: y0 - 8 }, partWords(part));
  }
  const [w, h] = [figure(width), figure(height)];
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}">` +
    `<title>Templates at true size</title><desc>${escaped(said)}</desc>` +
    `<g fill="none" stroke="black" stroke-width="0.25">` +
    `<g id="outlines">${groups.outlines}</g><g id="holes">${groups.holes}</g>` +
    `<g id="marks" stroke-width="0.1" stroke-dasharray="4 1">${groups.marks}</g></g>` +
    `<g id="words" font-family="sans-serif" font-size="4">${groups.words}` +
    (stop === undefined
      ? ''
      : `<text x="30" y="${STOP_ROOM - 4}" font-size="${STOP_HEIGHT}">${escaped(stop)}</text>`) +
    `<text x="30" y="${figure(height - 8)}">${escaped(about)}</text></g></svg>\n`
  );
}
