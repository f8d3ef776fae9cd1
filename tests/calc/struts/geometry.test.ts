import fc from 'fast-check';
import { Vector2, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { armsMeet, strutSpread } from '../../../src/calc/struts/arms.ts';
import { pinToPin } from '../../../src/calc/struts/pin-to-pin.ts';
import { strutRise } from '../../../src/calc/struts/rise.ts';
import { within } from '../within.ts';

// Lengths and angles against three 0.187.0, a general-purpose vector library.
const coordinate = within(-2000, 2000);
const point = fc.tuple(coordinate, coordinate, coordinate);
const DEGREES = 180 / Math.PI;

describe('the geometry of a strut', () => {
  it('has the length that three gives', () => {
    fc.assert(
      fc.property(point, point, (a, b) => {
        expect(pinToPin(...a, ...b)).toBeCloseTo(new Vector3(...a).distanceTo(new Vector3(...b)), 9);
      }),
    );
  });

  it('rises by the angle that three gives between the strut and its level part', () => {
    fc.assert(
      fc.property(point, point, (a, b) => {
        const along = new Vector3(...b).sub(new Vector3(...a));
        fc.pre(along.length() > 1);
        // three takes the arc cosine, which is blunt near 0° and 180°, so the sine is asked for the small angles.
        const up = new Vector3(0, 0, 1);
        const sine = Math.abs(along.dot(up)) / along.length();
        const rise = strutRise(...a, ...b) as number;
        expect(Math.sin(rise / DEGREES)).toBeCloseTo(sine, 9);
        expect(rise).toBeGreaterThanOrEqual(0);
        expect(rise).toBeLessThanOrEqual(90);
      }),
    );
    expect(strutRise(0, 0, 0, 0, 0, 5)).toBe(90);
    expect(strutRise(0, 0, 5, 0, 0, 0)).toBe(90);
    expect(strutRise(1, 2, 3, 1, 2, 3)).toBeInstanceOf(NoAnswer);
    // The angle whose cosine is 1/√3, that of a cube's diagonal with its side.
    expect(strutRise(0, 0, 0, 1, 0, Math.SQRT2)).toBeCloseTo(54.7356103172454, 12);
  });
});

describe('two arms seen from above', () => {
  const plan = fc.tuple(coordinate, coordinate, coordinate, coordinate, coordinate, coordinate, coordinate);

  it('spread by the angle that three gives', () => {
    fc.assert(
      fc.property(plan, ([pinX, portPinY, starPinY, portX, portY, starX, starY]) => {
        const port = new Vector2(pinX - portX, portPinY - portY);
        const starboard = new Vector2(pinX - starX, starPinY - starY);
        fc.pre(port.length() > 1 && starboard.length() > 1);
        const spread = strutSpread(pinX, portPinY, starPinY, portX, portY, starX, starY) as number;
        // The cosine is blunt near 0° and 180°: 1e-6° is what it can tell there.
        expect(Math.abs(spread - port.angleTo(starboard) * DEGREES)).toBeLessThanOrEqual(2e-6);
      }),
    );
    // A case in which the arc cosine would lose the angle: 1e-7 across 1, in degrees.
    expect(strutSpread(1, 0, 1e-7, 0, 0, 0, 0)).toBeCloseTo(1e-7 * DEGREES, 15);
  });

  it('meet on both lines', () => {
    fc.assert(
      fc.property(plan, coordinate, ([pinX, portPinY, starPinY, portX, portY, starX, starY], axisX) => {
        const port = new Vector2(pinX - portX, portPinY - portY);
        const starboard = new Vector2(pinX - starX, starPinY - starY);
        const turn = Math.abs(port.cross(starboard)) / (port.length() * starboard.length());
        // Where an arm runs athwart, x alone does not tell where on it the crossing lies.
        fc.pre(turn > 0.01 && Math.abs(port.x) > 10 && Math.abs(starboard.x) > 10);
        const meet = armsMeet(axisX, pinX, portPinY, starPinY, portX, portY, starX, starY) as number;
        const x = axisX + meet;
        const onPort = portY + ((x - portX) / port.x) * port.y;
        const onStarboard = starY + ((x - starX) / starboard.x) * starboard.y;
        expect(Math.abs(onPort - onStarboard)).toBeLessThanOrEqual(1e-6 * (1 + Math.abs(onPort)));
      }),
    );
  });

  it('have no crossing when parallel, and no angle without length', () => {
    expect(armsMeet(0, 200, -100, 100, 0, -100, 0, 100)).toBeInstanceOf(NoAnswer);
    expect(strutSpread(200, -100, 100, 0, -100, 0, 100)).toBe(0);
    expect(strutSpread(0, -100, 100, 0, -100, -50, 100)).toBeInstanceOf(NoAnswer);
  });
});
