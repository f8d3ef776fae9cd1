import { describe, expect, it } from 'vitest';
import { styles } from '../../../src/sheets/lettering/styles.ts';
import { fontOfWoff } from '../../../src/sheets/lettering/woff.ts';
import { lettering } from '../../support/sheets.ts';

describe('Lettering', () => {
  it('sets figures at one width and fractions as fractions', async () => {
    const letters = await lettering();
    const width = (text: string): number => letters.width(text, styles.value);
    expect(width('111')).toBeCloseTo(width('888'), 9);
    expect(width('9⁄16')).toBeLessThan(width('9/16') * 0.9);
  });

  it('breaks lines at spaces, and inside a word only when it must', async () => {
    const letters = await lettering();
    const lines = letters.lines('Hang a plumb line from the waterline mark', styles.text, 30);
    expect(lines.join(' ')).toBe('Hang a plumb line from the waterline mark');
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(letters.width(line, styles.text)).toBeLessThanOrEqual(30);
    const long = letters.lines('a'.repeat(60), styles.text, 30);
    expect(long.join('')).toBe('a'.repeat(60));
    for (const line of long) expect(letters.width(line, styles.text)).toBeLessThanOrEqual(30);
  });

  it('finds accents in the second alphabet, and says what the family lacks', async () => {
    const letters = await lettering();
    expect(letters.has('Žluťásek')).toBe(true);
    expect(letters.has('船')).toBe(false);
    expect(letters.runs('船', 'text')[0]?.glyphs[0]?.text).toBe('?');
  });

  it('refuses a file of another kind', async () => {
    await expect(fontOfWoff(new Uint8Array(100))).rejects.toThrow('not a WOFF file');
  });
});
