import { describe, expect, it } from 'vitest';
import { type Layout, layout } from '../../../src/drawings/layout/layout.ts';
import { sideView } from '../../../src/drawings/side/side-view.ts';
import { caseValues, judge } from '../case.ts';

const values = caseValues();
const scene = sideView(values, { unit: 'both', limits: judge(values) });
const pages = [
  { width: 432, height: 836 },
  { width: 320, height: 700 },
  { width: 358, height: 420 },
];

/** Straight pieces of every path in one role. */
function segments(it: Layout, role: string): [number, number, number, number][] {
  return it.primitives.flatMap((primitive) => {
    if (primitive.kind !== 'path' || primitive.role !== role) return [];
    const found = [...primitive.d.matchAll(/M([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)/g)];
    return found.map((match): [number, number, number, number] => [
      Number(match[1]),
      Number(match[2]),
      Number(match[3]),
      Number(match[4]),
    ]);
  });
}

const side = (ax: number, ay: number, bx: number, by: number, px: number, py: number): number =>
  (bx - ax) * (py - ay) - (by - ay) * (px - ax);

/** Whether a line has an end of another on either side of it, neither of them on it by less than a tenth of a pixel. */
const parted = (a: readonly [number, number, number, number], b: readonly number[]): boolean => {
  const [p, q] = [side(...a, b[0] ?? 0, b[1] ?? 0), side(...a, b[2] ?? 0, b[3] ?? 0)];
  const touch = 0.1 * Math.hypot(a[2] - a[0], a[3] - a[1]);
  return p * q < 0 && Math.min(Math.abs(p), Math.abs(q)) > touch;
};

describe.each(pages)('the side view on $width by $height', (page) => {
  const set = layout(scene, page);

  it('is to scale: every corner lies where one scale puts it', () => {
    const { scale, x, y } = set.transform;
    const blade = scene.shapes.find((it) => it.kind === 'polygon' && it.part === 'vane_rudder_span');
    const drawn = set.primitives.find((it) => it.kind === 'path' && it.part === 'vane_rudder_span');
    const corners = drawn?.kind === 'path' ? [...drawn.d.matchAll(/([-\d.]+) ([-\d.]+)/g)] : [];
    const points = blade?.kind === 'polygon' ? blade.points : [];
    expect(corners).toHaveLength(4);
    for (const [i, p] of points.entries()) {
      expect(Number(corners[i]?.[1])).toBeCloseTo(x + p.x * scale, 1);
      expect(Number(corners[i]?.[2])).toBeCloseTo(y - p.y * scale, 1);
    }
    expect(set.ratio).toBeCloseTo(scale / (96 / 25.4), 12);
  });

  it('keeps the whole drawing on the page', () => {
    const { scale, x, y } = set.transform;
    expect(x + scene.box.x0 * scale).toBeGreaterThanOrEqual(0);
    expect(x + scene.box.x1 * scale).toBeLessThanOrEqual(page.width);
    expect(y - scene.box.y1 * scale).toBeGreaterThanOrEqual(0);
    expect(y - scene.box.y0 * scale).toBeLessThanOrEqual(page.height);
  });

  it('letters everything, and nothing over anything else', () => {
    expect(set.dropped).toEqual([]);
    for (const [i, a] of set.labels.entries()) {
      for (const b of set.labels.slice(i + 1)) {
        const apart =
          a.rect.x + a.rect.width <= b.rect.x + 1e-6 ||
          b.rect.x + b.rect.width <= a.rect.x + 1e-6 ||
          a.rect.y + a.rect.height <= b.rect.y + 1e-6 ||
          b.rect.y + b.rect.height <= a.rect.y + 1e-6;
        expect(apart, `${a.name} over ${b.name}`).toBe(true);
      }
    }
  });

  it('crosses no dimension line with another', () => {
    const lines = segments(set, 'dimension');
    expect(lines.length).toBeGreaterThanOrEqual(5);
    for (const [i, a] of lines.entries()) {
      for (const b of lines.slice(i + 1)) {
        const crossing = parted(a, b) && parted(b, a);
        expect(crossing, `${a.join(' ')} over ${b.join(' ')}`).toBe(false);
      }
    }
  });

  it('enlarges a gap that is near its limit and too small to read, and says by how much', () => {
    const detail = set.details.find((it) => it.name === 'rudder_gap');
    expect(56.886 * set.transform.scale).toBeLessThan(24);
    expect(detail?.gap).toBeGreaterThanOrEqual(48);
    expect(detail?.gap).toBeCloseTo(56.886 * (detail?.scale ?? 0), 3);
    const [over, under] = (detail?.ratio ?? '').split(':').map(Number);
    expect(detail?.scale).toBeCloseTo(((over ?? 0) / (under ?? 1)) * (96 / 25.4), 9);
    expect(set.primitives.some((it) => it.kind === 'text' && it.text === detail?.ratio)).toBe(true);
  });
});

describe('dimensions by state', () => {
  const lettered = (overrides: Record<string, number>): Layout => {
    const changed = caseValues(overrides);
    return layout(sideView(changed, { unit: 'mm', limits: judge(changed) }), { width: 432, height: 836 });
  };

  it('sets a figure outside its limit on a plate, light on dark', () => {
    const outside = lettered({ shim_count: 3 });
    expect(outside.primitives.some((it) => it.role === 'plate')).toBe(true);
    const figure = outside.primitives.find((it) => it.kind === 'text' && it.text === '44.7 mm');
    expect(figure?.role).toBe('text-plate');
  });

  it('frames a near one, and leaves the rest bare', () => {
    const near = lettered({});
    expect(near.primitives.filter((it) => it.role === 'frame')).toHaveLength(1);
    expect(near.primitives.some((it) => it.role === 'plate')).toBe(false);
    const inside = lettered({ shim_count: 5 });
    expect(inside.primitives.some((it) => it.role === 'frame' || it.role === 'plate')).toBe(false);
  });

  it('needs no detail where the gap is drawn large enough', () => {
    const wide = lettered({ shim_count: 6, rudder_overhang_foot: -60 });
    expect(wide.details.some((it) => it.name === 'rudder_gap')).toBe(false);
  });
});

describe('paper', () => {
  it('takes the largest of the scales allowed that fits', () => {
    const set = layout(
      scene,
      { width: 680, height: 1010 },
      { medium: 'paper', ratios: [1 / 20, 1 / 10, 1 / 5] },
    );
    expect(set.ratio).toBeCloseTo(1 / 10, 9);
  });
});
