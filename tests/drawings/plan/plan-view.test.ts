import { describe, expect, it } from 'vitest';
import { planView } from '../../../src/drawings/plan/plan-view.ts';
import type { Arc, Scene } from '../../../src/drawings/scene.ts';
import { caseValues } from '../case.ts';

const values = caseValues();
const scene = planView(values, { unit: 'mm' });

const arcs = (drawn: Scene, part: string): Arc[] =>
  drawn.shapes.filter((it): it is Arc => it.kind === 'arc' && it.part === part);

describe('the plan view of the case', () => {
  it('sweeps each rudder about its own axis', () => {
    const [own] = arcs(scene, 'rudder_overhang');
    // At −950, where the gap is least, the own rudder's trailing edge is 35 + 23·850/1100 aft.
    expect(own?.at).toEqual({ x: -450, y: -0 });
    expect(own?.radius).toBeCloseTo(450 + 35 + (23 * 850) / 1100, 9);
    expect([own?.from, own?.to]).toEqual([-35, 35]);
    const [tail, nose] = arcs(scene, 'vane_rudder_span');
    expect([tail?.radius, nose?.radius]).toEqual([175, 55]);
    expect(tail?.at.x).toBeCloseTo(164.6587, 3);
  });

  it('measures the swung gap along the line of the axes', () => {
    const gap = scene.shapes.find((it) => it.kind === 'dimension' && it.name === 'rudder_gap_swung');
    if (gap?.kind !== 'dimension') throw new Error('no gap');
    expect(Math.hypot(gap.to.x - gap.from.x, gap.to.y - gap.from.y)).toBeCloseTo(56.886, 3);
  });

  it('spreads the arms by the angle the model gives', () => {
    const angle = scene.shapes.find((it) => it.kind === 'angle');
    if (angle?.kind !== 'angle') throw new Error('no angle');
    expect(angle.to - angle.from).toBeCloseTo(61.2579, 3);
    // arms_meet 22.5584: the arms' lines cross that far aft of the axis.
    expect(angle.at.x - 164.6587).toBeCloseTo(22.5584, 3);
  });

  it('has starboard at the bottom', () => {
    const foot = scene.shapes.find((it) => it.kind === 'circle' && it.part === 'starboard_foot_height');
    expect(foot?.kind === 'circle' ? foot.at.y : 0).toBeLessThan(0);
  });

  it('bends the face with its camber', () => {
    const drawn = planView(caseValues({ transom_camber_radius: 1500 }), { unit: 'mm' });
    const skin = drawn.shapes.find((it) => it.kind === 'polygon' && it.role === 'cut');
    const points = skin?.kind === 'polygon' ? skin.points.slice(0, 25) : [];
    const middle = points.find((p) => Math.abs(p.y) < 1e-9);
    for (const p of points) {
      expect((middle?.x ?? 0) - p.x).toBeCloseTo(1500 - Math.sqrt(1500 ** 2 - p.y ** 2), 6);
    }
  });

  it('has no angle between arms that are parallel or that is one arm', () => {
    const parallel = caseValues({ port_foot_y: -40, starboard_foot_y: 40 });
    expect(planView(parallel, { unit: 'mm' }).shapes.some((it) => it.kind === 'angle')).toBe(false);
    expect(
      planView(caseValues({ strut_count: 1 }), { unit: 'mm' }).shapes.some((it) => it.kind === 'angle'),
    ).toBe(false);
  });
});
