import { describe, expect, it } from 'vitest';
import { letteringFor } from '../../../src/drawings/layout/lettering.ts';
import { textWidth } from '../../../src/drawings/layout/text-width.ts';

describe('textWidth', () => {
  // Measured in a browser: Encode Sans at 100 px, weight 500, width 85 %, tabular figures, in ems.
  it.each([
    ['12 9⁄16 in', 3.6145],
    ['2 1⁄4 in', 2.6716],
    ['48 5⁄8 in', 3.2325],
    ['11⁄16', 1.6636],
    ['12', 1.122],
  ])('gives %s the width the typeface has', (text, ems) => {
    const { dimension } = letteringFor('screen');
    expect(textWidth(text, dimension) / dimension.size).toBeCloseTo(ems, 1);
  });
});
