import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const css = readFileSync(resolve(import.meta.dirname, '../../../src/views/look/tokens.css'), 'utf8');

/** Colour tokens of one rule of the file. */
function tokensOf(selector: string): ReadonlyMap<string, string> {
  const start = css.indexOf(`${selector} {`);
  const block = css.slice(start, css.indexOf('}', start));
  return new Map(
    [...block.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})/gi)].map((it) => [it[1] ?? '', it[2] ?? '']),
  );
}

const film = tokensOf(':root');
const deck =
  tokensOf(":root[data-deck-light='on']").size > 0
    ? tokensOf(":root[data-deck-light='on']")
    : tokensOf(':root[data-deck-light="on"]');

/** Relative luminance and contrast, WCAG 2.2. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}

const GROUNDS = ['film', 'sheet', 'well', 'water', 'mark-wash'];

const on = (tokens: ReadonlyMap<string, string>, ink: string, ground: string): number =>
  contrast(tokens.get(ink) ?? '#000000', tokens.get(ground) ?? '#000000');

describe('the colour tokens', () => {
  it('are all there', () => {
    for (const name of [...GROUNDS, 'ink', 'soft', 'edge', 'hair', 'mark'])
      expect(film.get(name), name).toMatch(/^#/);
  });

  it.each(['ink', 'soft', 'mark'])('%s reads as text on every ground (WCAG 2.2, 1.4.3)', (ink) => {
    for (const ground of GROUNDS) expect(on(film, ink, ground), ground).toBeGreaterThanOrEqual(4.5);
  });

  it('draw field borders that can be seen (WCAG 2.2, 1.4.11)', () => {
    for (const ground of GROUNDS) expect(on(film, 'edge', ground), ground).toBeGreaterThanOrEqual(3);
  });

  it('turn over on plates', () => {
    expect(on(film, 'sheet', 'ink')).toBeGreaterThanOrEqual(7);
    expect(on(film, 'sheet', 'mark')).toBeGreaterThanOrEqual(7);
  });

  it('go to black and white in deck light', () => {
    expect(on(deck, 'ink', 'film')).toBeCloseTo(21, 5);
    expect(on(deck, 'mark', 'film')).toBeGreaterThanOrEqual(10);
  });
});
