import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/drawings/point.ts';
import type { Dimension, Level, Polygon, Scene } from '../../../src/drawings/scene.ts';
import { boxOfShapes } from '../../../src/drawings/shapes.ts';
import { sideView } from '../../../src/drawings/side/side-view.ts';
import { caseValues, judge } from '../case.ts';

const dimension = (scene: Scene, name: string): Dimension => {
  const found = scene.shapes.find((it) => it.kind === 'dimension' && it.name === name);
  if (found?.kind !== 'dimension') throw new Error(`no dimension ${name}`);
  return found;
};

const polygons = (scene: Scene, part: string, role: string): Polygon[] =>
  scene.shapes.filter((it): it is Polygon => it.kind === 'polygon' && it.part === part && it.role === role);

const span = ({ from, to }: { from: Point; to: Point }): number => Math.hypot(to.x - from.x, to.y - from.y);

const values = caseValues();
const scene = sideView(values, { unit: 'both', limits: judge(values) });

describe('the side view of the case', () => {
  it('draws every clearance as long as the model says it is', () => {
    // The answers at the end of the model.
    const answers = {
      bearing_gap: 110,
      bracket_spacing: 550,
      drive_headroom: 80,
      shaft_face_gap: 152.1414,
      rudder_gap: 56.886,
      shim_stack: 48,
    };
    for (const [name, answer] of Object.entries(answers)) {
      expect(span(dimension(scene, name)), name).toBeCloseTo(answer, 3);
    }
    expect(scene.shapes.filter((it) => it.kind === 'dimension')).toHaveLength(6);
  });

  it('stands as high as a shaft that leans to the side does', () => {
    const leaning = caseValues({ shaft_side_lean: 12 });
    const tube = boxOfShapes(polygons(sideView(leaning, { unit: 'mm' }), 'shaft_foot_height', 'outline'));
    // 1000 mm from 100 up: 1000 × cos 12°, which 1/√(1 + tan²) is.
    expect(tube?.y1).toBeCloseTo(100 + 1000 * Math.cos((12 * Math.PI) / 180), 6);
    expect(tube?.y1).toBeCloseTo(leaning.number('shaft_top_height') ?? 0, 9);
  });

  it('measures the rudder gap where it is least: at the foot of the auxiliary rudder', () => {
    const { from, to } = dimension(scene, 'rudder_gap');
    expect(from.y).toBeCloseTo(-950, 9);
    expect(to.y).toBeCloseTo(-950, 9);
    // Own trailing edge: 35 at −100, 58 at −1200.
    expect(from.x).toBeCloseTo(35 + (23 * 850) / 1100, 9);
    expect(to.x).toBeCloseTo(164.6587 - 55, 3);
  });

  it('draws each shim sheet, square to the face and as thick as it is', () => {
    const sheets = polygons(scene, 'shim_count', 'shim');
    expect(sheets).toHaveLength(4);
    for (const { points } of sheets) {
      const [a, b, c] = points;
      if (a === undefined || b === undefined || c === undefined) throw new Error('a sheet without corners');
      expect(span({ from: b, to: c })).toBeCloseTo(12, 9);
      expect(span({ from: a, to: b })).toBeCloseTo(140, 9);
      // Along the face, which leans 10° forward at the top.
      expect((b.x - a.x) / (b.y - a.y)).toBeCloseTo(Math.tan((-10 * Math.PI) / 180), 9);
    }
    const inner = sheets[0]?.points[0];
    expect(inner?.x).toBeCloseTo((inner?.y ?? 0) * Math.tan((-10 * Math.PI) / 180), 9);
  });

  it('hangs the auxiliary rudder below the shaft with its balance ahead of the axis', () => {
    const [blade] = polygons(scene, 'vane_rudder_span', 'outline');
    const box = blade && boxOfShapes([blade]);
    expect(box?.x0).toBeCloseTo(164.6587 - 55, 3);
    expect(box?.x1).toBeCloseTo(164.6587 + 175, 3);
    expect([box?.y1, box?.y0]).toEqual([-50, -950]);
  });

  it('cuts the transom through its thickness, level with its readings', () => {
    const [skin] = polygons(scene, 'transom_rake', 'cut');
    const box = skin && boxOfShapes([skin]);
    expect([box?.y0, box?.y1]).toEqual([40, 900]);
    const cos = Math.cos((10 * Math.PI) / 180);
    const xs = (skin?.points ?? []).filter((p) => p.y === 40).map((p) => p.x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(18 / cos, 9);
  });

  it('reads the choices at the rule, feet at one height once', () => {
    const levels = scene.shapes.filter((it): it is Level => it.kind === 'level');
    expect(levels.map((it) => [it.caption, it.height])).toEqual([
      ['Upper bracket', 800],
      ['Both feet', 790],
      ['Lower bracket', 250],
      ['Foot of the shaft', 100],
    ]);
  });

  it('carries the state of each judged clearance', () => {
    expect(dimension(scene, 'rudder_gap').state).toBe('near');
    expect(dimension(scene, 'bearing_gap').state).toBe('inside');
    const three = caseValues({ shim_count: 3 });
    const outside = sideView(three, { unit: 'mm', limits: judge(three) });
    expect(dimension(outside, 'rudder_gap').state).toBe('outside');
    expect(dimension(outside, 'rudder_gap').figure.first).toBe('44.7 mm');
  });
});

describe('the side view of other mounts', () => {
  it('leans everything on the shaft, and measures along it', () => {
    const leaning = caseValues({ shaft_lean: 5 });
    const drawn = sideView(leaning, { unit: 'mm' });
    const { from, to } = dimension(drawn, 'bracket_spacing');
    expect((to.x - from.x) / (to.y - from.y)).toBeCloseTo(Math.tan((5 * Math.PI) / 180), 9);
    expect(span({ from, to })).toBeCloseTo(550 / Math.cos((5 * Math.PI) / 180), 9);
    const [blade] = polygons(drawn, 'vane_rudder_span', 'outline');
    const [low, high] = blade?.points ?? [];
    expect(((high?.x ?? 0) - (low?.x ?? 0)) / ((high?.y ?? 0) - (low?.y ?? 0))).toBeCloseTo(
      Math.tan((5 * Math.PI) / 180),
      9,
    );
  });

  it('puts a wedge under a fixed flange, as thin at its edge as chosen', () => {
    const fixed = caseValues({ lower_flange_hinged: false });
    const drawn = sideView(fixed, { unit: 'mm' });
    const [wedge] = polygons(drawn, 'wedge_edge', 'choice');
    const [lowIn, lowOut, highOut, highIn] = wedge?.points ?? [];
    const thickness = [(lowOut?.x ?? 0) - (lowIn?.x ?? 0), (highOut?.x ?? 0) - (highIn?.x ?? 0)];
    expect(Math.min(...thickness)).toBeCloseTo(3, 9);
    expect(polygons(scene, 'wedge_edge', 'choice')).toHaveLength(0);
  });

  it('draws one strut or two, as chosen', () => {
    const one = sideView(caseValues({ strut_count: 1 }), { unit: 'mm' });
    expect(polygons(one, 'single_foot_height', 'choice').length).toBeGreaterThan(0);
    expect(polygons(one, 'port_foot_height', 'choice')).toHaveLength(0);
    expect(polygons(scene, 'port_foot_height', 'choice').length).toBeGreaterThan(0);
  });

  it('moves the foot pin off a cambered face along its own normal', () => {
    const cambered = caseValues({ transom_camber_radius: 1000, transom_rake: 0 });
    const drawn = sideView(cambered, { unit: 'mm' });
    const pins = drawn.shapes.filter((it) => it.kind === 'circle' && it.part === 'port_foot_height');
    // Face at y = −170: −(1000 − √(1000² − 170²)); its normal leans outboard by asin(0.17), and 40 mm of it are
    // 40·cos(asin 0.17) aft.
    const aft = -(1000 - Math.sqrt(1000 ** 2 - 170 ** 2)) + 40 * Math.sqrt(1 - 0.17 ** 2);
    const xs = pins.map((it) => (it.kind === 'circle' ? it.at.x : 0));
    expect(Math.min(...xs)).toBeCloseTo(aft, 9);
  });

  it('shows rudders that share no height by the height between them', () => {
    const deep = caseValues({ main_rudder_foot: -300, vane_rudder_drop: 500 });
    const drawn = sideView(deep, { unit: 'mm' });
    // The auxiliary rudder's head is at 100 − 500 = −400, the own rudder's foot at −300.
    expect(span(dimension(drawn, 'rudder_gap_vertical'))).toBeCloseTo(100, 9);
  });

  it('follows a measured profile of the transom', () => {
    const drawn = sideView(values, {
      unit: 'mm',
      profile: [
        [0, 0],
        [400, -120],
        [900, -150],
      ],
    });
    const [skin] = polygons(drawn, 'transom_rake', 'cut');
    expect(skin?.points.some((p) => p.y === 400 && Math.abs(p.x + 120) < 1e-9)).toBe(true);
  });
});

describe('what the side view does not know', () => {
  it('leaves a part out that cannot be placed', () => {
    const drawn = sideView(caseValues({ vane_rudder_span: null }), { unit: 'mm' });
    expect(polygons(drawn, 'vane_rudder_span', 'outline')).toHaveLength(0);
    expect(polygons(drawn, 'shaft_foot_height', 'outline').length).toBeGreaterThan(0);
  });

  it('dots it at its last good place, with the reason', () => {
    const drawn = sideView(caseValues({ vane_rudder_span: null }), {
      unit: 'mm',
      lastGood: values,
      reasons: { vane_rudder_span: 'Its span is empty.' },
    });
    const lost = drawn.shapes.filter((it) => it.role === 'lost');
    expect(lost.length).toBeGreaterThan(0);
    expect(lost.every((it) => 'part' in it && it.part === 'vane_rudder_span')).toBe(true);
    const reasons = drawn.shapes.flatMap((it) =>
      it.kind === 'label' && it.role === 'reason' ? it.lines : [],
    );
    expect(reasons.join(' ')).toContain('Its span is empty.');
  });

  it('lights the part that a choice belongs to', () => {
    const drawn = sideView(values, { unit: 'mm', lit: 'shim_thickness' });
    const lit = drawn.shapes.filter((it) => 'lit' in it && it.lit === true);
    expect(lit).toHaveLength(4);
    expect(lit.every((it) => 'part' in it && it.part === 'shim_count')).toBe(true);
  });
});

describe('another scenario behind', () => {
  const other = caseValues({ upper_bracket_height: 900 });
  const drawn = sideView(values, { unit: 'mm', ghost: other });

  it('draws only what differs', () => {
    const ghosts = drawn.shapes.filter((it) => it.role === 'ghost');
    expect(ghosts.length).toBeGreaterThan(0);
    const parts = new Set(ghosts.map((it) => ('part' in it ? it.part : undefined)));
    expect(parts.has('upper_bracket_height')).toBe(true);
    expect(parts.has('shim_count')).toBe(false);
    expect(parts.has('vane_rudder_span')).toBe(false);
  });

  it('letters the difference', () => {
    expect(dimension(drawn, 'bracket_spacing').behind?.first).toBe('650 mm');
    expect(dimension(drawn, 'bearing_gap').behind).toBeUndefined();
  });
});

describe('a window on one part', () => {
  it('shows that part, whole, and the lettering that concerns it', () => {
    const drawn = sideView(values, { unit: 'mm', part: 'shim_thickness' });
    expect(drawn.cropped).toBe(true);
    const sheets = boxOfShapes(polygons(drawn, 'shim_count', 'shim'));
    expect(sheets).not.toBeNull();
    if (sheets === null) return;
    expect(drawn.box.x0).toBeLessThan(sheets.x0);
    expect(drawn.box.y1).toBeGreaterThan(sheets.y1);
    expect(drawn.box.y1 - drawn.box.y0).toBeLessThan((scene.box.y1 - scene.box.y0) / 3);
    const lettered = drawn.shapes.flatMap((it) => (it.kind === 'dimension' ? [it.name] : []));
    expect(lettered.sort()).toEqual(['shaft_face_gap', 'shim_stack']);
  });

  it('is the whole view for an input that is no part of it', () => {
    expect(sideView(values, { unit: 'mm', part: 'boat_speed' }).cropped).toBe(false);
  });
});
