import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

const SYSTEM = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const isRoot = (): boolean => process.getuid?.() === 0;

/** A Chromium named by the environment, the system's, or the test tool's own; undefined when there is none. */
const found = (): string | undefined =>
  [process.env.CHROMIUM_PATH, ...SYSTEM, chromium.executablePath()].find(
    (path) => path !== undefined && path !== '' && existsSync(path),
  );

function installDebian(): void {
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  execFileSync('apt-get', ['update', '-qq'], { stdio: 'ignore', env: environment });
  execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'poppler-utils'], {
    stdio: 'ignore',
    env: environment,
  });
}

/** Where a Chromium is. With CI=true and root, Debian's is installed when there is none; else it throws one sentence. */
export function findChromium(): string {
  const path = found();
  if (path !== undefined) return path;
  if (process.env.CI === 'true' && isRoot()) {
    installDebian();
    const installed = found();
    if (installed !== undefined) return installed;
  }
  throw new Error(
    'The browser tests need a Chromium: install one with your system (on Debian: apt install chromium), or set CHROMIUM_PATH to where it is.',
  );
}

/** Flags for a browser that talks to this machine alone. */
export const CHROMIUM_FLAGS: readonly string[] = [
  ...(isRoot() ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--font-render-hinting=none',
];
