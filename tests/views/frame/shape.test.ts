import { describe, expect, it } from 'vitest';
import { shapeOf } from '../../../src/views/frame/shape.ts';

describe('the layout', () => {
  it('follows the window', () => {
    expect(shapeOf(1440, 900, 16)).toBe('three');
    expect(shapeOf(1024, 768, 16)).toBe('two');
    expect(shapeOf(390, 844, 16)).toBe('one');
    expect(shapeOf(844, 390, 16)).toBe('low');
    expect(shapeOf(320, 256, 16)).toBe('one');
  });

  it('makes fewer columns for larger letters', () => {
    expect(shapeOf(1440, 900, 32)).toBe('low');
    expect(shapeOf(1440, 1000, 32)).toBe('two');
    expect(shapeOf(1024, 768, 32)).toBe('one');
  });
});
