import { spawn } from 'node:child_process';
import { join, resolve } from 'node:path';

const ROOT = resolve(import.meta.dirname, '../..');

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs one of the project's commands as a person does, with text on its standard input. */
export function command(name: string, args: readonly string[], input = ''): Promise<Ended> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, ['--import', 'tsx', join('src/cli', `${name}.ts`), ...args], {
      cwd: ROOT,
    });
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
