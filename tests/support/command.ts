import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build } from 'vite';
import { afterAll } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');
/** Inside `node_modules`, so that what is built there finds the libraries. */
const CACHE = join(ROOT, 'node_modules/.cache/sternmount-commands');

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a program with text on its standard input. */
function run(args: readonly string[], input: string): Promise<Ended> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, args, { cwd: ROOT });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    child.on('error', fail);
    child.on('close', (code) => done({ code, out, err }));
    // A command that refuses its arguments may end before it has read anything.
    child.stdin.on('error', () => {});
    child.stdin.end(input);
  });
}

const built = new Map<string, Promise<string>>();

/** The command in one file, built once for a file of tests: dozens of runs need not compile it anew. */
async function fileOf(name: string): Promise<string> {
  mkdirSync(CACHE, { recursive: true });
  const outDir = mkdtempSync(join(CACHE, `${name}-`));
  afterAll(() => rmSync(outDir, { recursive: true, force: true }));
  await build({
    configFile: false,
    logLevel: 'error',
    root: ROOT,
    // One file starts in half the time that the libraries' hundreds take.
    ssr: { noExternal: true },
    build: { ssr: join('src/cli', `${name}.ts`), outDir, emptyOutDir: true, target: 'node20' },
  });
  return join(outDir, `${name}.js`);
}

/** Runs one of the project's commands, built into one file, with text on its standard input. */
export async function command(name: string, args: readonly string[], input = ''): Promise<Ended> {
  const file = built.get(name) ?? fileOf(name);
  built.set(name, file);
  return run([await file, ...args], input);
}

/** Runs one of the project's commands as its script does, from its source. */
export const commandAsTyped = (name: string, args: readonly string[], input = ''): Promise<Ended> =>
  run(['--import', 'tsx', join('src/cli', `${name}.ts`), ...args], input);
