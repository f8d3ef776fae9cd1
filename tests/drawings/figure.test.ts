import { describe, expect, it } from 'vitest';
import { angleFigure, lengthFigure } from '../../src/drawings/figure.ts';

describe('lengthFigure', () => {
  it('letters millimetres first and the nearest sixteenth of an inch after', () => {
    // 56.886 / 25.4 = 2.2396 in = 2 and 3.83 sixteenths.
    expect(lengthFigure(56.886, 'both')).toEqual({ first: '56.9 mm', second: '2 1⁄4 in' });
    expect(lengthFigure(110, 'both')).toEqual({ first: '110 mm', second: '4 5⁄16 in' });
  });

  it('letters one unit when one is asked for', () => {
    expect(lengthFigure(254, 'mm')).toEqual({ first: '254 mm' });
    expect(lengthFigure(254, 'in')).toEqual({ first: '10 in' });
  });

  it('keeps the sign of an overlap, as a minus sign', () => {
    expect(lengthFigure(-63.114, 'both')).toEqual({ first: '−63.1 mm', second: '−2 1⁄2 in' });
  });

  it('takes as many decimals as tell a value from its bound', () => {
    expect(lengthFigure(49.96, 'mm', 50).first).toBe('50.0 mm');
    expect(lengthFigure(49.9996, 'mm', 50).first).not.toBe(lengthFigure(50, 'mm', 50).first);
    expect(lengthFigure(50.04, 'mm', 49.96).first).not.toBe(lengthFigure(49.96, 'mm', 50.04).first);
  });
});

describe('angleFigure', () => {
  it('carries a degree sign without a space', () => {
    expect(angleFigure(61.2579).first).toBe('61.3°');
  });
});
