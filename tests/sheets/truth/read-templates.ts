import DxfParser from 'dxf-parser';
import type { ReadPage } from '../../support/read-pdf.ts';
import { textOf } from '../../support/read-pdf.ts';
import { plain, type Told, told } from './told.ts';

const HOLE = /(\d+): ((?:−?[\d ⁄]+ (?:mm|in))(?: \(−?[\d ⁄]+ in\))?)/g;
const LEVEL = /((?:−?[\d⁄]+(?: [\d⁄]+)? (?:mm|in))(?: \(−?[\d ⁄]+ in\))?) up the face/g;

const halves = (words: string): string[] =>
  [...words.matchAll(/(−?[\d⁄]+(?: [\d⁄]+)? (?:mm|in))/g)].map(([it]) => it);

/** Distances lettered at the holes of one layout, and its levels. */
function layout(where: string, text: string): Told[] {
  const across = [...text.matchAll(HOLE)].flatMap(([, number, words = '']) =>
    halves(words).map((it) => told(where, `hole ${number}, across, ${it.slice(-2)}`, it)),
  );
  const levels = [...text.matchAll(LEVEL)].flatMap(([, words = '']) => halves(words));
  return [
    ...across,
    ...['mm', 'in'].flatMap((unit) => {
      const its = [...new Set(levels.filter((it) => it.endsWith(unit)))].sort();
      return its.length === 0 ? [] : [told(where, `levels, ${unit}`, its.join(', '))];
    }),
  ];
}

const only = (where: string, what: string, text: string, pattern: RegExp): Told[] => {
  const words = pattern.exec(text)?.[1];
  return words === undefined ? [] : [told(where, what, words)];
};

/** What the templates say on paper. */
export function readTemplates(pages: readonly ReadPage[]): Told[] {
  const where = 'templates';
  return pages.flatMap((page) => {
    const text = plain(textOf(page));
    const stop = /^Do not drill from this sheet: (.*?)\. (?=[A-Z])/.exec(text);
    const rest = stop === null ? text : text.slice(stop[0].length);
    const shared = [
      told(where, 'stop', stop?.[1] ?? 'it can be built'),
      ...only(where, 'stand-ins', text, /Rests on (no|\d+) stand-ins?/),
    ];
    if (rest.startsWith('Shim '))
      return [
        ...shared,
        ...only(where, 'shims', rest, /Cut (\d+) from sheet/),
        ...only(where, 'shim, thickness', rest, /from sheet (.+?) thick\./),
      ];
    if (rest.startsWith('Wedge, section'))
      return [...shared, ...only(where, 'wedge', rest, /two sides, (.+?wards|flat, .+? thick)\./)];
    if (rest.startsWith('Foot')) {
      const pads = /Cut (\d+) from sheet/.exec(rest)?.[1] ?? '0';
      return [...shared, told(where, 'pads', pads)];
    }
    const plate = /^Backing plate, (lower bracket|foot) Cut (\d+) from plate (.+?) thick/.exec(rest);
    if (plate !== null) {
      const name = plate[1] === 'foot' ? 'foot' : 'lower';
      return [
        ...shared,
        told(where, `${name} plates`, plate[2] ?? ''),
        told(where, `${name} plates, thickness`, plate[3] ?? ''),
      ];
    }
    const holes = /^Holes of the (lower bracket|feet)/.exec(rest);
    if (holes === null) return shared;
    return [
      ...shared,
      ...only(where, 'drill', rest, /Drill (\d[\d.]* mm for M\d+ \([\d⁄]+ in for [\d⁄-]+\))/),
      // A page shows a piece, which need not hold every level.
      ...layout(where, rest).filter((it) => it.what.startsWith('hole')),
    ];
  });
}

/** What stands under a part, and what a file says of itself. */
function fileWords(where: string, texts: readonly string[]): Told[] {
  const all = texts.map(plain);
  const find = (pattern: RegExp): RegExpExecArray | undefined =>
    all.map((it) => pattern.exec(it)).find((it) => it !== null) ?? undefined;
  const off = (what: string, title: string): Told[] => {
    const found = find(new RegExp(`^${title}: (\\d+) off(?:, (.+) thick)?$`));
    return found === undefined
      ? []
      : [
          told(where, what, found[1] ?? ''),
          ...(found[2] === undefined
            ? []
            : [told(where, `${what === 'shims' ? 'shim' : what}, thickness`, found[2])]),
        ];
  };
  const stop = find(/^Do not drill from this file: (.*)\.$/)?.[1];
  const about = find(/Rests on (no|\d+) stand-ins?/)?.[1];
  return [
    ...off('shims', 'Shim'),
    ...off('lower plates', 'Backing plate, lower bracket'),
    ...off('foot plates', 'Backing plate, foot'),
    ...layout(where, all.join(' / ')),
    told(where, 'stop', stop ?? 'it can be built'),
    ...(about === undefined ? [] : [told(where, 'stand-ins', about)]),
  ];
}

/** What a DXF file says, read by a general-purpose reader, and how wide its holes are. */
export function readDxf(text: string): Told[] {
  const where = 'DXF';
  const entities = (new DxfParser().parseSync(text)?.entities ?? []) as unknown as readonly {
    readonly type: string;
    readonly text?: string;
    readonly radius?: number;
  }[];
  const texts = entities.flatMap((it) =>
    it.text === undefined
      ? []
      : [
          it.text.replace(/\\U\+([0-9A-F]{4})/g, (_, code) =>
            String.fromCodePoint(Number.parseInt(code, 16)),
          ),
        ],
  );
  const widths = new Set(entities.flatMap((it) => (it.radius === undefined ? [] : [String(2 * it.radius)])));
  return [...fileWords(where, texts), ...[...widths].map((it) => told(where, 'hole, diameter', it))];
}

const unescaped = (text: string): string =>
  text
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');

export function readSvg(text: string): Told[] {
  const where = 'SVG';
  const texts = [...text.matchAll(/<text [^>]*>(.*?)<\/text>/g)].map(([, it = '']) => unescaped(it));
  const widths = new Set(
    [...text.matchAll(/<circle [^>]*r="([\d.]+)"/g)].map(([, r]) => String(2 * Number(r))),
  );
  return [...fileWords(where, texts), ...[...widths].map((it) => told(where, 'hole, diameter', it))];
}
