import { describe, expect, it } from 'vitest';
import type { Dimension, Polygon, Scene } from '../../../src/drawings/scene.ts';
import { boxOfShapes } from '../../../src/drawings/shapes.ts';
import { sternView } from '../../../src/drawings/stern/stern-view.ts';
import { caseValues } from '../case.ts';

const values = caseValues();
const scene = sternView(values, { unit: 'mm' });

const dimension = (drawn: Scene, name: string): Dimension => {
  const found = drawn.shapes.find((it) => it.kind === 'dimension' && it.name === name);
  if (found?.kind !== 'dimension') throw new Error(`no dimension ${name}`);
  return found;
};
const span = ({ from, to }: Dimension): number => Math.hypot(to.x - from.x, to.y - from.y);

const plates = (drawn: Scene, part: string): Polygon[] =>
  drawn.shapes.filter(
    (it): it is Polygon => it.kind === 'polygon' && it.part === part && it.role === 'choice',
  );

describe('the stern view of the case', () => {
  it('has port to the left, and the flanges where they are bolted', () => {
    const port = boxOfShapes(plates(scene, 'port_foot_height').slice(0, 1));
    expect(port).toEqual({ x0: -230, y0: 760, x1: -110, y1: 820 });
    const lower = boxOfShapes(plates(scene, 'lower_bracket_height').slice(0, 1));
    expect(lower).toEqual({ x0: -100, y0: 180, x1: 100, y1: 320 });
  });

  it('leans the shaft to the side about the lower clamp, and the holes stay', () => {
    const leans = sternView(caseValues({ shaft_side_lean: 2 }), { unit: 'mm' });
    // The upper clamp stands 550 mm above the lower: 550 · tan 2° = 19.21.
    const middle = (drawn: Scene, part: string): number => {
      const box = boxOfShapes(plates(drawn, part).slice(-1));
      return box === null ? Number.NaN : (box.x0 + box.x1) / 2;
    };
    expect(middle(leans, 'upper_bracket_height') - middle(scene, 'upper_bracket_height')).toBeCloseTo(
      19.21,
      2,
    );
    expect(middle(leans, 'lower_bracket_height')).toBeCloseTo(0, 9);
    expect(plates(leans, 'port_foot_height')[0]).toEqual(plates(scene, 'port_foot_height')[0]);
  });

  it('is as wide as the usable transom at both heights', () => {
    const outline = scene.shapes.find((it) => it.kind === 'polygon' && it.part === 'transom_rake');
    const widths = outline?.kind === 'polygon' ? outline.points.map((p) => [Math.abs(p.x), p.y]) : [];
    expect(widths).toContainEqual([400, 250]);
    expect(widths).toContainEqual([600, 790]);
    expect(widths).toContainEqual([600, 900]);
  });

  it('measures the edges the way they are nearest', () => {
    expect(span(dimension(scene, 'port_foot_edge'))).toBeCloseTo(80, 9);
    expect(dimension(scene, 'port_foot_edge').caption).toBe('Both feet to edge');
    expect(span(dimension(scene, 'lower_bracket_edge'))).toBeCloseTo(140, 9);
    const wide = sternView(caseValues({ port_foot_y: -520 }), { unit: 'mm' });
    const { from, to } = dimension(wide, 'port_foot_edge');
    // 600 − 520 − 60: sideways to the edge.
    expect([from.x, to.x]).toEqual([-580, -600]);
    expect(dimension(wide, 'starboard_foot_edge').caption).toBe('Starboard foot to edge');
  });

  it('drops the lowest hole square onto the heeled waterline', () => {
    const it = dimension(scene, 'lowest_hole');
    expect(span(it)).toBeCloseTo(210.9817, 3);
    // The foot of it lies on the waterline z = y·tan 20°.
    expect(it.to.y).toBeCloseTo(it.to.x * Math.tan((20 * Math.PI) / 180), 6);
    const port = sternView(caseValues({ shaft_offset: -80 }), { unit: 'mm' });
    const { to } = dimension(port, 'lowest_hole');
    expect(to.y).toBeCloseTo(-to.x * Math.tan((20 * Math.PI) / 180), 6);
  });

  it('has a hole for every bolt', () => {
    const holes = scene.shapes.filter((it) => it.kind === 'circle' && it.part === 'bolt_diameter');
    expect(holes).toHaveLength(2 + 2 * 2);
    const four = sternView(caseValues({ foot_bolt_count: 4 }), { unit: 'mm' });
    expect(four.shapes.filter((it) => it.kind === 'circle' && it.part === 'bolt_diameter')).toHaveLength(
      2 + 2 * 4,
    );
  });
});
