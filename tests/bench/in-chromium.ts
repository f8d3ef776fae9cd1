import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { CHROMIUM_FLAGS, findChromium } from '../support/chromium.ts';

/** The measure's worker as one script. */
async function script(): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), 'sternmount-bench-'));
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      root: resolve('.'),
      build: {
        outDir,
        emptyOutDir: true,
        target: 'es2023',
        lib: {
          entry: 'tests/bench/study-worker.ts',
          formats: ['iife'],
          name: 'bench',
          fileName: () => 'bench.js',
        },
      },
    });
    return readFileSync(join(outDir, 'bench.js'), 'utf8');
  } finally {
    rmSync(outDir, { recursive: true, force: true });
  }
}

/** The studies' times in a worker of Chromium, whose compiler is another than Node's, ms. `plan` is a plan file's text. */
export async function timesInChromium(plan: string): Promise<unknown> {
  const text = await script();
  const browser = await chromium.launch({ executablePath: findChromium(), args: [...CHROMIUM_FLAGS] });
  try {
    const page = await browser.newPage();
    return await page.evaluate(
      ([source, sent]) =>
        new Promise((done, fail) => {
          const worker = new Worker(URL.createObjectURL(new Blob([source], { type: 'text/javascript' })));
          worker.onmessage = ({ data }) => done(data);
          worker.onerror = ({ message }) => fail(new Error(message));
          worker.postMessage(sent);
        }),
      [text, plan] as const,
    );
  } finally {
    await browser.close();
  }
}
