import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../src/calc/answer.ts';
import { type Stands, stands } from '../../src/fitting/bob.ts';

const read = (values: Readonly<Record<string, number>>) =>
  stands(Object.entries(values).map(([step, value]) => ({ step, done: false, value })));

const bob = { bob_apart: 550, bob_aft_top: 66, bob_aft_foot: 60, bob_side_top: 40, bob_side_foot: 30.4 };

describe('stands', () => {
  it('takes the list out of the lean to the side', () => {
    // By hand: atan(9.6/550) = 1.0000°; a list of 1° leaves nothing.
    const found = read({ ...bob, lie_list: 1, lie_trim: 0 }) as Stands;
    expect(found.seen.side).toBeCloseTo(1, 3);
    expect(found.boat.side).toBeCloseTo(0, 3);
    expect(found.seen.aft).toBeCloseTo(0.625, 3);
    expect(found.lieRead).toBe(true);
    expect((read(bob) as Stands).lieRead).toBe(false);
  });

  it('uses a level where the bob was not read, and says what is missing', () => {
    const { bob_side_top: _, ...some } = bob;
    expect((read({ ...some, level_side: 0.4 }) as Stands).seen.side).toBe(0.4);
    expect(read(some)).toBeInstanceOf(NoAnswer);
    expect((read(some) as NoAnswer).why).toContain('to the side');
    expect((read({ ...bob, bob_apart: 0 }) as NoAnswer).why).toContain('above 0');
  });
});
