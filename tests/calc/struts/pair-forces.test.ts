import fc from 'fast-check';
import { Matrix3, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { type PairPins, strutPair, worstForces } from '../../../src/calc/struts/pair-forces.ts';
import { oneStrutShare } from '../../../src/calc/struts/share.ts';
import { within } from '../within.ts';

describe('two struts that hold the upper clamp', () => {
  it('balance each case’s level force, in every sign', () => {
    fc.assert(
      fc.property(
        fc.tuple(within(100, 400), within(-60, -10), within(10, 60), within(700, 900)),
        fc.tuple(within(-200, 50), within(-400, -100), within(500, 1000)),
        fc.tuple(within(-200, 50), within(100, 400), within(500, 1000)),
        within(100, 5000),
        within(0, 1),
        within(0, 90),
        (clamp, port, starboard, reaction, drag, swing) => {
          const pins: PairPins = [...clamp, ...port, ...starboard];
          const pair = strutPair(pins);
          if (pair instanceof NoAnswer) throw new Error(pair.why);
          const along = (pinY: number, foot: readonly [number, number, number]) =>
            new Vector3(clamp[0], pinY, clamp[3]).sub(new Vector3(...foot)).normalize();
          const a = along(clamp[1], port);
          const b = along(clamp[2], starboard);
          const balance = new Matrix3(a.x, b.x, 0, a.y, b.y, 0, 0, 0, 1).invert();
          const angle = (swing * Math.PI) / 180;
          const wanted = [
            [drag, 1],
            [Math.sin(angle), Math.cos(angle)],
          ].flatMap(([x = 0, y = 0]) =>
            [1, -1].flatMap((sx) => [1, -1].map((sy) => [sx * x * reaction, sy * y * reaction] as const)),
          );
          const worst = worstForces(pair, reaction, drag, swing);
          const most = { port: 0, starboard: 0, lift: 0 };
          for (const [x, y] of wanted) {
            const { x: inPort, y: inStarboard } = new Vector3(x, y, 0).applyMatrix3(balance);
            const held = a.clone().multiplyScalar(inPort).add(b.clone().multiplyScalar(inStarboard));
            expect(Math.hypot(held.x - x, held.y - y)).toBeLessThanOrEqual(1e-7 * reaction);
            most.port = Math.max(most.port, Math.abs(inPort));
            most.starboard = Math.max(most.starboard, Math.abs(inStarboard));
            most.lift = Math.max(most.lift, Math.abs(held.z));
          }
          for (const of of ['port', 'starboard', 'lift'] as const) {
            expect(Math.abs(worst[of] - most[of])).toBeLessThanOrEqual(1e-7 * (reaction + most[of]));
          }
        },
      ),
    );
  });
});

describe('a single strut', () => {
  it('is bent as much by a lever on the far side of its foot as by one on the near side', () => {
    const share = (pinForward: number) =>
      oneStrutShare(1000, 0, 0, 60.3, 3.9, 205, 193_000, 1.25, 200, pinForward) as number;
    expect(share(-500)).toBeCloseTo(share(100), 12);
    expect(share(-500)).toBeGreaterThan(0);
  });
});
