import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../src/calc/answer.ts';
import { holeOnFace, upTheFace } from '../../src/calc/fasteners/hole-on-face.ts';
import { faceNormal } from '../../src/calc/struts/foot-pin.ts';
import { faceX } from '../../src/calc/transom/face-x.ts';
import { holesOf } from '../../src/order/holes.ts';
import { caseAsk } from './case-ask.ts';

const at = (place: Parameters<typeof holeOnFace>[0], across: number, raised: number) => {
  const found = holeOnFace(place, across, raised);
  if (found instanceof NoAnswer) throw new Error(found.why);
  return found;
};

describe('a hole square to a flange', () => {
  it('is at the flange’s own spacing on a flat upright face', () => {
    expect(at({ y: 0, z: 250, rake: 0, radius: 0 }, 70, 0)).toEqual({ y: 70, along: 70, z: 250, up: 250 });
  });

  // Plane geometry: chord t of a circle of radius R about its middle subtends asin(t/R), so the tape reads R·(φ + asin(t/R)).
  it.each([
    [0, 70],
    [300, 40],
    [-300, 40],
    [-300, -40],
  ])('turns with a cambered upright face, middle at %s, bolt %s', (y, t) => {
    const R = 2500;
    const angle = Math.asin(y / R) + Math.asin(t / R);
    const hole = at({ y, z: 500, rake: 0, radius: R }, t, 0);
    expect(hole.along).toBeCloseTo(R * angle, 9);
    expect(hole.y).toBeCloseTo(R * Math.sin(angle), 9);
    expect(hole.z).toBeCloseTo(500, 9);
  });

  it('lies on the face and on the line square to the flange, raked and cambered together', () => {
    for (const [y, rake, radius, across, raised] of [
      [200, -20, 1500, 40, 30],
      [-350, 35, 900, -60, -45],
      [0, 12, 700, 70, 0],
    ] as const) {
      const hole = at({ y, z: 600, rake, radius }, across, raised);
      const x = faceX(hole.y, hole.z, rake, radius) as number;
      const x0 = faceX(y, 600, rake, radius) as number;
      const n = faceNormal(y, 600, rake, radius);
      // What is left of the way from the flange's middle once its part along the normal is taken off lies in the flange.
      const d = { x: x - x0, y: hole.y - y, z: hole.z - 600 };
      const out = d.x * n.x + d.y * n.y + d.z * n.z;
      const inPlane = { x: d.x - out * n.x, y: d.y - out * n.y, z: d.z - out * n.z };
      expect(Math.hypot(inPlane.x, inPlane.y, inPlane.z)).toBeCloseTo(Math.hypot(across, raised), 8);
      expect(out).toBeLessThan(0);
    }
  });

  it('has no answer off the end of the curve', () => {
    expect(holeOnFace({ y: 0, z: 0, rake: 0, radius: 100 }, 101, 0)).toBeInstanceOf(NoAnswer);
  });

  it('measures up a profile piece by piece: 3-4-5 twice, by hand', () => {
    const profile = [
      [0, 0],
      [40, 30],
      [80, 0],
    ];
    expect(upTheFace(80, 0, profile)).toBeCloseTo(100, 12);
    expect(upTheFace(40, 0, profile)).toBeCloseTo(50, 12);
    expect(upTheFace(100, 60)).toBeCloseTo(200, 9);
  });
});

describe('the holes to mark', () => {
  it('are six on the case to start from: two columns at the bracket and at each foot', () => {
    const { holes, unanswered } = holesOf(caseAsk(), 'mm');
    expect(unanswered).toEqual([]);
    expect(holes.map((it) => [it.name, it.side, it.across.mm, it.height.mm])).toEqual([
      ['Lower bracket, port', 'to port', 70, 250],
      ['Lower bracket, starboard', 'to starboard', 70, 250],
      ['Port foot, port', 'to port', 210, 790],
      ['Port foot, starboard', 'to port', 130, 790],
      ['Starboard foot, port', 'to starboard', 130, 790],
      ['Starboard foot, starboard', 'to starboard', 210, 790],
    ]);
  });

  it('show the rounding: 250 mm up a face of 10° is 253.857 on the tape, 9 31⁄32 or 10 in', () => {
    const hole = holesOf(caseAsk(), 'mm').holes[0];
    // 250/cos 10° = 253.8566; × 32/25.4 = 319.82 thirty-seconds, so 320/32 = 10 in, 0.1434 mm more than true.
    expect(hole?.upFace.exact).toBeCloseTo(253.85665, 4);
    expect(hole?.upFace.mm).toBe(254);
    expect(hole?.upFace.mmOff).toBeCloseTo(0.1434, 3);
    expect(hole?.upFace.inches).toBe('10');
    expect(hole?.upFace.inchesOff).toBeCloseTo(0.1434, 3);
    // 70 × 32/25.4 = 88.19 thirty-seconds: 2 3⁄4 in, 0.15 mm short.
    expect(hole?.across.inches).toBe('2 3⁄4');
    expect(hole?.across.inchesOff).toBeCloseTo(-0.15, 9);
  });

  it('follow the number of struts and of bolts', () => {
    const { holes, notes } = holesOf(caseAsk({ strut_count: 1, foot_bolt_count: 4 }), 'mm');
    expect(holes.map((it) => it.name).slice(2)).toEqual([
      'Single foot, port, row 1',
      'Single foot, starboard, row 1',
      'Single foot, port, row 2',
      'Single foot, starboard, row 2',
    ]);
    expect(holes[2]?.upFace.exact).toBeCloseTo(790 / Math.cos((10 * Math.PI) / 180) + 15, 6);
    expect(notes.join(' ')).toContain('Measure them on the foot');
  });

  it('say what is missing instead of guessing', () => {
    const ask = caseAsk();
    const { holes, unanswered } = holesOf((name) => (name === 'foot_bolt_spacing' ? null : ask(name)), 'mm');
    expect(holes).toHaveLength(2);
    expect(unanswered).toHaveLength(2);
    expect(unanswered[0]).toMatch(/^No answer for the holes of the port foot: “.+” has no value\.$/);
  });
});
