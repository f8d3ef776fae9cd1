import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/calc/catalogue.ts';
import { call } from '../../src/calc/record.ts';

describe('every library function', () => {
  it('has a name of its own', () => {
    const ids = catalogue.map((it) => it.id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each(catalogue.map((it) => [it.id, it] as const))('%s gives its worked example', (_, it) => {
    const answer = call(it, it.example.given);
    expect(typeof answer === 'number' ? answer : answer.why).toBeTypeOf('number');
    expect(Math.abs((answer as number) - it.example.answer)).toBeLessThanOrEqual(it.example.tolerance);
  });

  it.each(catalogue.map((it) => [it.id, it] as const))(
    '%s takes as many arguments as its example gives',
    (_, it) => {
      const needed = it.arguments.filter((argument) => !('default' in argument)).length;
      expect(it.example.given.length).toBeGreaterThanOrEqual(needed);
      expect(it.example.given.length).toBeLessThanOrEqual(it.arguments.length);
    },
  );

  it.each(catalogue.map((it) => [it.id, it] as const))(
    '%s hides no term behind a 0, a 1 or a figure left out of its example',
    (_, it) => {
      const { given } = it.example;
      const answer = call(it, given);
      // What stands at 0 or 1 may be so only where it has no say.
      const hidden = it.arguments.filter((_argument, i) => {
        if (i >= given.length) return true;
        if (given[i] !== 0 && given[i] !== 1) return false;
        return [0.37, 3.7, -3.7, 37].some((other) => {
          const moved = call(it, given.with(i, other));
          return typeof moved === 'number' && moved !== answer;
        });
      });
      expect(hidden.map(({ name }) => name)).toEqual([]);
    },
  );
});
