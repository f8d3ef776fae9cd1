import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findChromium } from './support/chromium.ts';

/** The whole test command: types, lint, then unit, command-line and browser tests; ends on one plain line of counts. */
const steps: readonly (readonly [name: string, command: string, ...args: string[]])[] = [
  ['types', process.execPath, 'node_modules/typescript/bin/tsc', '--noEmit', '-p', '.'],
  ['lint', process.execPath, 'node_modules/@biomejs/biome/bin/biome', 'check', '--config-path=.biome.json'],
];

const ending = (child: ChildProcess): Promise<number | null> =>
  new Promise((done, fail) => {
    child.on('error', fail);
    child.on('close', done);
  });

/** Runs a program and keeps what it says. */
async function output(command: string, args: readonly string[]) {
  const child = spawn(command, args);
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
  }
  return { code: await ending(child), said };
}

interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numFailedTestSuites: number;
}

let passed = 0;
let failed = 0;

try {
  findChromium();
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
}

/** Types and lint keep to one core, so they run beside the tests; what they say is told after them. */
const checks = steps.map(async ([name, command, ...args]) => {
  const { code, said } = await output(command, args);
  return { name, code, said };
});

const folder = mkdtempSync(join(tmpdir(), 'sternmount-tests-'));
const reportFile = join(folder, 'report.json');
const only = process.argv.slice(2);
const tests = spawn(
  process.execPath,
  [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${reportFile}`,
    ...only,
  ],
  { stdio: 'inherit' },
);
const status = await ending(tests);
for (const { name, code, said } of await Promise.all(checks)) {
  process.stdout.write(`${said}${name}: ${code === 0 ? 'passed' : 'failed'}\n`);
  if (code === 0) passed++;
  else failed++;
}
try {
  const report = JSON.parse(readFileSync(reportFile, 'utf8')) as Report;
  passed += report.numPassedTests;
  // A file that fails before its tests begin has no failed test to count.
  failed +=
    report.numFailedTests === 0 && status !== 0
      ? Math.max(1, report.numFailedTestSuites)
      : report.numFailedTests;
} catch {
  failed++;
}
rmSync(folder, { recursive: true, force: true });
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exit(failed === 0 && status === 0 ? 0 : 1);
