import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CLASSES, classAt, type LimitClass } from '../../../src/calc/limits/classes.ts';
import type { State } from '../../../src/calc/limits/judge.ts';
import { byWorst, cannotBeBuilt, type Ranked, worstFirst } from '../../../src/calc/limits/worst-first.ts';

const limit = (kind: LimitClass, state: State, ratio?: number): Ranked => ({
  class: kind,
  verdict: { state, room: ratio, ratio },
});

describe('the order of limits', () => {
  it('puts what cannot be built before what is too close before what is too weak, whatever their room', () => {
    const weak = limit('too weak', 'outside', -3);
    const close = limit('too close', 'outside', -0.5);
    const unbuilt = limit('cannot be built', 'outside', -0.001);
    expect(worstFirst([weak, close, unbuilt])).toEqual([unbuilt, close, weak]);
  });

  it('goes by the smallest share of room within a class; outside without room counts as −1', () => {
    const [a, b, c] = [-1.2, undefined, -0.3].map((ratio) => limit('too close', 'outside', ratio));
    expect(worstFirst([c, b, a] as Ranked[])).toEqual([a, b, c]);
  });

  it('knows no class where nothing is outside', () => {
    const near = limit('too weak', 'near', 0.01);
    const unbuiltNear = limit('cannot be built', 'near', 0.05);
    const inside = limit('cannot be built', 'inside', 0.2);
    const without = limit('too weak', 'no answer');
    const yes = limit('too close', 'inside');
    const idle = limit('cannot be built', 'does not apply');
    expect(worstFirst([yes, inside, unbuiltNear, idle, near, without])).toEqual([
      ...[without, near, unbuiltNear],
      ...[inside, yes],
    ]);
  });

  it('is an order: it sorts the same from any arrangement', () => {
    const any = fc.record({
      class: fc.constantFrom(...CLASSES),
      state: fc.constantFrom<State>('outside', 'no answer', 'near', 'inside'),
      ratio: fc.option(fc.double({ min: -5, max: 5, noNaN: true }), { nil: undefined }),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 12 }), fc.nat(), (given, seed) => {
        const limits = given.map((it) => limit(it.class, it.state, it.ratio));
        const turned = limits.toSorted(
          (a, b) => (((limits.indexOf(a) + 1) * seed) % 7) - (((limits.indexOf(b) + 1) * seed) % 7),
        );
        const [one, other] = [worstFirst(limits), worstFirst(turned)];
        for (const [i, it] of one.entries()) expect(byWorst(it, other[i] as Ranked)).toBe(0);
      }),
    );
  });

  it('tells those that cannot be built apart from those that only would not be', () => {
    const outside = limit('cannot be built', 'outside', -0.1);
    const given = [limit('too weak', 'outside', -2), outside, limit('cannot be built', 'near', 0)];
    expect(cannotBeBuilt(given)).toEqual([outside]);
  });
});

describe('a class', () => {
  it('can turn on the value: a narrow gap is too close, an overlap cannot be built', () => {
    const gap = { class: 'too close', unbuildableBelow: 0 } as const;
    expect([10, 0, -1e-9, undefined].map((it) => classAt(gap, it))).toEqual([
      ...['too close', 'too close', 'cannot be built', 'too close'],
    ]);
    expect(classAt({ class: 'too weak' }, -5)).toBe('too weak');
  });
});
