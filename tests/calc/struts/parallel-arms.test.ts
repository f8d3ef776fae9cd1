import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { armsMeet, armsMeetAside, strutSpread } from '../../../src/calc/struts/arms.ts';

type Arms = readonly [number, number, number, number, number, number, number];

/** Two arms from their feet to pins 80 mm apart at x = 400, of two lengths, the second turned by a small angle. */
function arms(first: number, second: number, heading: number, turn: number): Arms {
  const [x, port, starboard] = [400, -40, 40];
  const foot = (length: number, angle: number, y: number) =>
    [x - length * Math.cos(angle), y - length * Math.sin(angle)] as const;
  const a = foot(first, heading, port);
  const b = foot(second, heading + turn, starboard);
  return [x, port, starboard, ...a, ...b];
}

describe('arms that run parallel seen from above', () => {
  const lengths = [30, 400, 9000];
  const headings = [-1.2, -0.3, 0.2, 0.7, 1.4];
  const cases = lengths.flatMap((first) =>
    lengths.flatMap((second) => headings.map((heading) => [first, second, heading] as const)),
  );

  it.each(cases)('of %d and %d mm, heading %f, are told by the angle between them alone', (...it) => {
    for (const meet of [armsMeet, armsMeetAside]) {
      expect(meet(0, ...arms(...it, 3e-10))).toBeInstanceOf(NoAnswer);
      expect(meet(0, ...arms(...it, -3e-10))).toBeInstanceOf(NoAnswer);
      expect(meet(0, ...arms(...it, 4e-9))).toBeTypeOf('number');
      expect(meet(0, ...arms(...it, -4e-9))).toBeTypeOf('number');
    }
  });
});

describe('the spread of two arms', () => {
  it('has no answer where either has no length, and has one straight aft and straight abeam', () => {
    expect(strutSpread(0, 0, 10, 0, 0, -50, 100)).toBeInstanceOf(NoAnswer);
    expect(strutSpread(0, 0, 10, -50, -100, 0, 10)).toBeInstanceOf(NoAnswer);
    expect(strutSpread(0, 0, 10, -50, 0, 0, 90)).toBeCloseTo(90, 12);
    expect(strutSpread(0, 0, 10, 0, -80, -70, 10)).toBeCloseTo(90, 12);
    expect(strutSpread(0, 0, 0.5, -50, 0, -0.5, 0.5)).toBeCloseTo(0, 12);
  });
});
