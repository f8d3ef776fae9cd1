import { describe, expect, it } from 'vitest';
import { layout } from '../../src/drawings/layout/layout.ts';
import { newPlan } from '../../src/drawings/new-plan.ts';

describe('the outline of a new plan', () => {
  const scene = newPlan();

  it('is dashed throughout and lettered with nothing but numbers', () => {
    const drawn = scene.shapes.filter(
      (it) => it.kind === 'polygon' || it.kind === 'polyline' || it.kind === 'circle',
    );
    expect(drawn.length).toBeGreaterThan(10);
    expect(new Set(drawn.map((it) => it.role))).toEqual(new Set(['dashed']));
    const texts = layout(scene, { width: 432, height: 836 }).primitives.flatMap((it) =>
      it.kind === 'text' ? [it.text] : [],
    );
    expect(texts).toEqual(scene.points.map((it) => String(it.number)));
  });

  it.each([
    [432, 836],
    [320, 700],
  ])('keeps its numbers apart on %i by %i', (width, height) => {
    const set = layout(scene, { width, height });
    for (const [i, a] of set.labels.entries()) {
      for (const b of set.labels.slice(i + 1)) {
        expect(Math.hypot(a.rect.x - b.rect.x, a.rect.y - b.rect.y)).toBeGreaterThan(14);
      }
    }
  });
});
