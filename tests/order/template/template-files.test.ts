import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { dxfOf } from '../../../src/order/template/dxf.ts';
import { svgOf } from '../../../src/order/template/svg.ts';
import { templateParts } from '../../../src/order/template/template-parts.ts';
import type { Inputs } from '../../workbook/model-case.ts';
import { caseAsk } from '../case-ask.ts';

const ABOUT = 'Žluťásek, base values.\nMillimetres <true> size.';
const partsOf = (changes: Inputs = {}) =>
  templateParts({ ask: caseAsk(changes), units: 'mm', profile: [] }).parts;

interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly shape?: boolean;
  readonly vertices?: readonly { readonly x: number; readonly y: number }[];
  readonly center?: { readonly x: number; readonly y: number };
  readonly radius?: number;
  readonly text?: string;
}

/** Read back by a general-purpose reader, dxf-parser, that shares nothing with what wrote it. */
function read(text: string): { header: Record<string, unknown>; layers: string[]; entities: Entity[] } {
  const it = new DxfParser().parseSync(text);
  if (it === null) throw new Error('The reader gave nothing.');
  return {
    header: it.header,
    layers: Object.keys(it.tables.layer.layers),
    entities: it.entities as unknown as Entity[],
  };
}

const sizeOf = (spots: readonly { readonly x: number; readonly y: number }[]): readonly [number, number] => {
  const [xs, ys] = [spots.map((it) => it.x), spots.map((it) => it.y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
};

describe('templates as DXF', () => {
  const { header, layers, entities } = read(dxfOf(partsOf(), ABOUT));

  it('say that they are of release 12 and in millimetres', () => {
    expect(header.$ACADVER).toBe('AC1009');
    expect(header.$INSUNITS).toBe(4);
    expect(header.$MEASUREMENT).toBe(1);
    expect(layers).toEqual(['OUTLINES', 'HOLES', 'MARKS', 'WORDS']);
  });

  it('have the shim, the foot and the plates as closed outlines of their true size', () => {
    const outlines = entities.filter((it) => it.type === 'POLYLINE');
    expect(outlines.map((it) => [it.layer, it.shape])).toEqual(outlines.map(() => ['OUTLINES', true]));
    // Flange 200 × 140, foot 120 × 60, plates √15000 = 122.5 so 123 square, and 80 + 123 where two would overlap.
    expect(outlines.map((it) => sizeOf(it.vertices ?? []))).toEqual([
      [200, 140],
      [120, 60],
      [123, 123],
      [203, 123],
    ]);
  });

  it('have the holes at their spacing, 13 mm for M12 (ISO 273, fine)', () => {
    const holes = entities.filter((it) => it.type === 'CIRCLE');
    expect(new Set(holes.map((it) => it.layer))).toEqual(new Set(['HOLES']));
    expect(new Set(holes.map((it) => it.radius))).toEqual(new Set([6.5]));
    const x = (i: number): number => holes[i]?.center?.x ?? Number.NaN;
    // Shim two, foot two, plates one and two, then the layouts of two and four.
    expect(holes).toHaveLength(13);
    expect(x(1) - x(0)).toBeCloseTo(140, 6);
    expect(x(3) - x(2)).toBeCloseTo(80, 6);
    expect(x(8) - x(7)).toBeCloseTo(140, 6);
    expect(x(10) - x(9)).toBeCloseTo(80, 6);
    expect(x(11) - x(10)).toBeCloseTo(260, 6);
  });

  it('keep each hole inside the outline it belongs to, and no part over another', () => {
    const boxes = entities
      .filter((it) => it.type === 'POLYLINE')
      .map((it) => {
        const [xs, ys] = [(it.vertices ?? []).map((v) => v.x), (it.vertices ?? []).map((v) => v.y)];
        return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) };
      });
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1))
        expect(a.x1 < b.x0 || b.x1 < a.x0 || a.y1 < b.y0 || b.y1 < a.y0).toBe(true);
  });

  it('are plain ASCII, one code and one value by turns, whatever the plan is called', () => {
    const text = dxfOf(partsOf(), ABOUT);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: what ASCII is
    expect(text).toMatch(/^[\x00-\x7f]*$/);
    const rows = text.split('\r\n').slice(0, -1);
    expect(rows.length % 2).toBe(0);
    expect(rows.filter((row, i) => i % 2 === 0 && !/^ *\d+$/.test(row))).toEqual([]);
    expect(text).toContain('\\U+017D');
  });
});

describe('the wedge', () => {
  it('is drawn in section with its two edges and its angle', () => {
    const section = partsOf({ lower_flange_hinged: false }).find((it) => it.id === 'wedge-section');
    const [below, above, hullAbove, hullBelow] = section?.outlines[0] ?? [];
    if (below === undefined || above === undefined || hullAbove === undefined || hullBelow === undefined)
      throw new Error('The wedge has four corners.');
    // A face leaning 10° forward is further from an upright shaft at its top: 3 mm below, 3 + 140·tan 10° above.
    expect(below.x - hullBelow.x).toBeCloseTo(3, 9);
    expect(above.x - hullAbove.x).toBeCloseTo(3 + 140 * Math.tan(Math.PI / 18), 9);
    const lean = Math.atan2(hullAbove.x - hullBelow.x, hullAbove.y - hullBelow.y);
    expect((lean * 180) / Math.PI).toBeCloseTo(-10, 9);
  });

  it('is not there when the flange is hinged', () => {
    expect(partsOf().some((it) => it.id.startsWith('wedge'))).toBe(false);
  });
});

describe('templates as SVG', () => {
  const text = svgOf(partsOf(), ABOUT);

  it('are in millimetres: as many of them as units of the drawing', () => {
    const [, width, height, boxWidth, boxHeight] =
      /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(text) ?? [];
    expect(Number(width)).toBeGreaterThan(500);
    expect([boxWidth, boxHeight]).toEqual([width, height]);
  });

  it('have the same outlines and holes', () => {
    const outlines = /<g id="outlines">(.*?)<\/g>/.exec(text)?.[1] ?? '';
    const sizes = [...outlines.matchAll(/d="M(.*?)Z"/g)].map(([, d = '']) =>
      sizeOf(d.split('L').map((it) => ({ x: Number(it.split(' ')[0]), y: Number(it.split(' ')[1]) }))).map(
        (n) => Math.round(n * 1000),
      ),
    );
    expect(sizes).toEqual([
      [200000, 140000],
      [120000, 60000],
      [123000, 123000],
      [203000, 123000],
    ]);
    expect(text.match(/<circle /g)).toHaveLength(13);
  });

  it('take a title as text, never as markup', () => {
    expect(text).toContain('&lt;true&gt;');
    expect(text).not.toContain('<true>');
  });
});

describe('what has no template', () => {
  it('says so, and the rest is there', () => {
    const ask = caseAsk();
    const { parts, unanswered } = templateParts({
      ask: (name) => (name === 'foot_width' ? null : ask(name)),
      units: 'mm',
      profile: [],
    });
    expect(parts.map((it) => it.id)).toEqual(['shim', 'plate-lower', 'holes-lower']);
    expect(unanswered.length).toBeGreaterThan(0);
    expect(unanswered[0]).toMatch(/^No answer for the template “Foot”: “.+” has no value\.$/);
  });

  it('draws no shim when there is none', () => {
    expect(partsOf({ shim_count: 0 }).some((it) => it.id === 'shim')).toBe(false);
  });
});
