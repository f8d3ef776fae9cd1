import { describe, expect, it } from 'vitest';
import { inputs } from '../../../src/plan/book.ts';
import { refusal } from '../../../src/plan/bounds.ts';
import { isPicked, optionsOf } from '../../../src/views/parts/options.ts';

describe('inputs chosen from a list', () => {
  it('are all whose values are few: listed ones, words, yes or no, one to three whole numbers', () => {
    const few = inputs.filter(
      (cell) =>
        cell.only !== undefined ||
        cell.type === 'flag' ||
        cell.type === 'word' ||
        (cell.type === 'whole' && (cell.max ?? Infinity) - (cell.min ?? 0) < 3),
    );
    expect(few.length).toBeGreaterThan(5);
    expect(inputs.filter(isPicked)).toEqual(few);
  });

  it('offer each value that the input takes, the present one among them', () => {
    for (const cell of inputs) {
      const options = optionsOf(cell);
      if (options === undefined) continue;
      expect(options.map(([, value]) => value)).toContain(cell.value);
      for (const [, value] of options) expect(refusal(cell, value), cell.name).toBeUndefined();
      expect(new Set(options.map(([word]) => word)).size).toBe(options.length);
    }
  });

  it('tell a bolt as it is sold', () => {
    const bolt = inputs.find((cell) => cell.name === 'bolt_diameter');
    expect(bolt && optionsOf(bolt)?.map(([word]) => word)).toEqual(['M6', 'M8', 'M10', 'M12']);
  });
});
