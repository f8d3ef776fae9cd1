import { describe, expect, it } from 'vitest';
import { type Choice, candidates } from '../../src/studies/candidates.ts';

const choice = (over: Partial<Choice>): Choice => ({
  name: 'x',
  present: 12,
  low: 0,
  high: 25,
  step: 5,
  counts: false,
  ...over,
});

describe('candidates', () => {
  it.each<[Partial<Choice>, number[], number[]]>([
    [{}, [15, 20, 25], [10, 5, 0]],
    [{ present: 25 }, [], [20, 15, 10, 5, 0]],
    [{ present: 3, low: 0, high: 4, step: 1 }, [4], [2, 1, 0]],
    [{ present: 0.2, low: 0, high: 0.45, step: 0.1 }, [0.3, 0.4], [0.1, 0]],
    [{ present: 25.4, low: 12, high: 40, step: { inch: [1, 4] } }, [31.75, 38.1], [19.05, 12.7]],
    // From outside its range it comes back in, nearest first.
    [{ present: 40 }, [], [25, 20, 15, 10, 5, 0]],
    [{ present: -7, low: 1 }, [5, 10, 15, 20, 25], []],
    [{ present: 4, only: [8, 2, 4, 6] }, [6, 8], [2]],
  ])('%j goes up by %j and down by %j', (over, up, down) => {
    expect(candidates(choice(over), 1)).toEqual(up);
    expect(candidates(choice(over), -1)).toEqual(down);
  });
});
