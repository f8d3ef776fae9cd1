import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = resolve(import.meta.dirname, '..');

/** Each layer and the layers it may import from, besides itself. */
const BELOW: Readonly<Record<string, readonly string[]>> = {
  calc: [],
  units: ['calc'],
  plan: ['calc', 'units'],
  workbook: ['calc', 'units', 'plan'],
  studies: ['calc', 'units', 'plan'],
  drawings: ['calc', 'units', 'plan'],
  order: ['calc', 'units', 'plan'],
  fitting: ['calc', 'units', 'plan', 'order'],
  sheets: ['calc', 'units', 'plan', 'workbook', 'order', 'fitting', 'drawings'],
  session: ['calc', 'units', 'plan', 'workbook', 'studies', 'order', 'fitting'],
  views: ['calc', 'units', 'plan', 'workbook', 'studies', 'drawings', 'order', 'fitting', 'session'],
  app: [
    ...['calc', 'units', 'plan', 'workbook', 'studies', 'drawings', 'order', 'fitting', 'sheets'],
    ...['session', 'views'],
  ],
  cli: [
    ...['calc', 'units', 'plan', 'workbook', 'studies', 'drawings', 'order', 'fitting', 'sheets'],
    'session',
  ],
};

const IMPORT =
  /(?:^|\n)\s*(?:import|export)\s(?:[^'";]*?\sfrom\s)?['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)/g;

interface Line {
  readonly file: string;
  readonly to: string;
}

const files = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
  .map((file) => `src/${file.split(sep).join('/')}`)
  .filter((file) => /\.tsx?$/.test(file));

const lines: Line[] = files.flatMap((file) =>
  [...readFileSync(join(ROOT, file), 'utf8').matchAll(IMPORT)].map((match) => ({
    file,
    to: match[1] ?? match[2] ?? '',
  })),
);

const layerOf = (file: string): string => file.split('/')[1] ?? '';

const target = ({ file, to }: Line): string | undefined =>
  to.startsWith('.')
    ? relative(ROOT, resolve(ROOT, dirname(file), to))
        .split(sep)
        .join('/')
    : undefined;

describe('import lines', () => {
  it('are found at all', () => {
    expect(lines.length).toBeGreaterThan(100);
  });

  it('only go down the layers', () => {
    const up = lines.filter((line) => {
      const to = target(line);
      if (to === undefined || !to.startsWith('src/')) return false;
      const from = layerOf(line.file);
      return layerOf(to) !== from && !(BELOW[from] ?? []).includes(layerOf(to));
    });
    expect(up).toEqual([]);
  });

  it('reach the formula engine from the workbook alone', () => {
    expect(
      lines.filter((line) => line.to.startsWith('hyperformula') && layerOf(line.file) !== 'workbook'),
    ).toEqual([]);
  });

  it('bring no library into calc, and no view library below the views', () => {
    const outside = lines.filter((line) => !line.to.startsWith('.'));
    expect(outside.filter((line) => layerOf(line.file) === 'calc')).toEqual([]);
    expect(
      outside.filter(
        (line) =>
          /^(react|handsontable|recharts)/.test(line.to) && !['views', 'app'].includes(layerOf(line.file)),
      ),
    ).toEqual([]);
  });

  it('keep each view out of the others', () => {
    const shared = new Set(['parts', 'look', 'use-session.ts']);
    const across = lines.filter((line) => {
      const to = target(line);
      if (layerOf(line.file) !== 'views' || to === undefined || !to.startsWith('src/views/')) return false;
      const [, , mine = ''] = line.file.split('/');
      const [, , theirs = ''] = to.split('/');
      return mine !== theirs && !shared.has(theirs) && mine !== 'frame';
    });
    expect(across).toEqual([]);
  });

  it('form no ring between files', () => {
    const next = new Map<string, string[]>();
    for (const line of lines) {
      const to = target(line);
      if (to?.startsWith('src/')) next.set(line.file, [...(next.get(line.file) ?? []), to]);
    }
    const done = new Set<string>();
    const path: string[] = [];
    const ring = (file: string): string[] | undefined => {
      const at = path.indexOf(file);
      if (at >= 0) return path.slice(at);
      if (done.has(file)) return undefined;
      path.push(file);
      for (const to of next.get(file) ?? []) {
        const found = ring(to);
        if (found !== undefined) return found;
      }
      path.pop();
      done.add(file);
      return undefined;
    };
    for (const file of files) expect(ring(file)).toBeUndefined();
  });
});
