import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';
import { serve } from '../../src/cli/serve.ts';
import { CHROMIUM_FLAGS, findChromium } from '../support/chromium.ts';

declare module 'vitest' {
  interface ProvidedContext {
    page: string;
    browser: string;
  }
}

/** Builds the page, serves it on this machine, and starts one browser for all browser tests. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const executablePath = findChromium();
  const outDir = mkdtempSync(join(tmpdir(), 'sternmount-page-'));
  await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } });
  const server = await serve(outDir);
  const browser = await chromium.launchServer({ executablePath, args: [...CHROMIUM_FLAGS] });
  project.provide('page', server.address);
  project.provide('browser', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  };
}
