import { describe, expect, it } from 'vitest';
import { sideView } from '../../../src/drawings/side/side-view.ts';
import { sceneToSvg } from '../../../src/drawings/svg/scene-to-svg.ts';
import { paperPalette } from '../../../src/drawings/svg/tokens.ts';
import { caseValues, judge, screenPalette } from '../case.ts';

const values = caseValues();
const scene = sideView(values, { unit: 'both', limits: judge(values) });
const page = { width: 432, height: 836 };

describe('sceneToSvg', () => {
  const svg = sceneToSvg(scene, page, screenPalette, { ids: 'a-' });

  it('uses the colours of the palette and no other', () => {
    const used = new Set([...svg.matchAll(/#[0-9A-Fa-f]{6}/g)].map(([colour]) => colour));
    const given: ReadonlySet<string> = new Set(Object.values(screenPalette));
    expect([...used].filter((colour) => !given.has(colour))).toEqual([]);
    expect(used.has(screenPalette.mark)).toBe(true);
  });

  it('marks parts for pointing', () => {
    expect(svg).toContain('data-part="shim_count"');
    expect(svg).toContain('data-part="upper_bracket_height"');
  });

  it('closes every group it opens, and refers only to clips it defines', () => {
    expect(svg.match(/<g /g)?.length ?? 0).toBe(svg.match(/<\/g>/g)?.length ?? 0);
    for (const [, id] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(svg).toContain(`<clipPath id="${id}"`);
  });

  it('is black on white on paper, outlines 0.5 mm', () => {
    const paper = sceneToSvg(scene, page, paperPalette, { medium: 'paper' });
    const used = new Set([...paper.matchAll(/#[0-9A-Fa-f]{6}/g)].map(([colour]) => colour));
    expect(used).toEqual(new Set(['#ffffff', '#000000']));
    const outline = /class="outline"[^>]*stroke-width="([\d.]+)"/.exec(paper);
    expect(Number(outline?.[1])).toBeCloseTo((0.5 * 96) / 25.4, 2);
  });

  it('escapes what a plan can carry into it', () => {
    const odd = sideView(caseValues({ tube_od: null }), {
      unit: 'mm',
      lastGood: values,
      reasons: { tube_od: '<b>&"empty"</b>' },
    });
    const drawn = sceneToSvg(odd, page, screenPalette);
    expect(drawn).not.toContain('<b>');
    expect(drawn).toContain('&lt;b&gt;');
  });
});
