import '../../src/cli/sound-compiler.ts';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { demoText } from '../studies/plan-points.ts';
import { timesInChromium } from './in-chromium.ts';
import { pageTimes } from './page.ts';

/**
 * Measures side by side in one run and prints one JSON object. Nothing is asserted here. What the page's worker does is
 * built as the page is: run from source, each small function would be named anew whenever it is made.
 */
async function measured(): Promise<Record<string, unknown>> {
  const cache = resolve('node_modules/.cache');
  mkdirSync(cache, { recursive: true });
  const outDir = mkdtempSync(join(cache, 'sternmount-bench-'));
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      root: resolve('.'),
      build: { ssr: 'tests/bench/measures.ts', outDir, emptyOutDir: true, target: 'node20' },
    });
    const { measures } = (await import(
      pathToFileURL(join(outDir, 'measures.js')).href
    )) as typeof import('./measures.ts');
    return measures();
  } finally {
    rmSync(outDir, { recursive: true, force: true });
  }
}

const engine = await measured();
const inChromium = await timesInChromium(demoText());
const page = await pageTimes();
process.stdout.write(`${JSON.stringify({ ...engine, in_chromium: inChromium, ...page }, null, 2)}\n`);
process.exit(0);
