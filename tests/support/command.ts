import { spawn } from 'node:child_process';
import { join, resolve } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { evaluate } from '../../src/cli/commands/evaluate.ts';
import { print } from '../../src/cli/commands/print.ts';
import { study } from '../../src/cli/commands/study.ts';
import { ended } from '../../src/cli/exit.ts';

const ROOT = resolve(import.meta.dirname, '../..');

const COMMANDS = { evaluate, study, print } as const;

export type CommandName = keyof typeof COMMANDS;

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** A stream that keeps what is written to it. */
function kept(): { readonly stream: PassThrough; readonly text: () => string } {
  const stream = new PassThrough();
  const chunks: Buffer[] = [];
  stream.on('data', (chunk: Buffer) => chunks.push(chunk));
  return { stream, text: () => Buffer.concat(chunks).toString('utf8') };
}

/** Runs one of the project's commands in this process, with text on its input. */
export async function command(name: CommandName, args: readonly string[], input = ''): Promise<Ended> {
  const [out, err] = [kept(), kept()];
  const streams = {
    args,
    input: Readable.from([Buffer.from(input)]),
    output: out.stream,
    errors: err.stream,
  };
  const code = await ended(COMMANDS[name], streams);
  return { code, out: out.text(), err: err.text() };
}

/** Runs one of the project's commands as its script does, from its source, as a process of its own. */
export const commandAsTyped = (name: CommandName, args: readonly string[], input = ''): Promise<Ended> =>
  new Promise((done, fail) => {
    const file = join('src/cli', `${name}.ts`);
    const child = spawn(process.execPath, ['--import', 'tsx', file, ...args], { cwd: ROOT });
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
