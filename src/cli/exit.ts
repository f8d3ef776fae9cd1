import './sound-compiler.ts';
import type { Readable, Writable } from 'node:stream';
import { systemFault } from './system-fault.ts';

/** Input that is refused: the command ends with 2 and this one sentence. */
export class Refused extends Error {}

/** What a command is given, and where it writes. */
export interface Streams {
  readonly args: readonly string[];
  readonly input: Readable;
  readonly output: Writable;
  readonly errors: Writable;
}

export type Command = (streams: Streams) => Promise<void>;

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** What a command ends with: 0 when it answers, 2 with a sentence when it refuses its input, 1 for a fault of our own. */
export async function ended(command: Command, streams: Streams): Promise<0 | 1 | 2> {
  try {
    await command(streams);
    return 0;
  } catch (error) {
    if (error instanceof Refused) {
      streams.errors.write(`${oneLine(error.message)}\n`);
      return 2;
    }
    const what = error instanceof Error ? error.message : String(error);
    streams.errors.write(`Sternmount failed on something of its own: ${oneLine(what)}\n`);
    return 1;
  }
}

/** Runs a command as this process. */
export async function run(command: Command): Promise<void> {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    // A reader that closes early, as a pager does, is no fault.
    if (error.code === 'EPIPE') process.exit(0);
    process.stderr.write(`The answer cannot be written to standard output: ${systemFault(error)}.\n`);
    process.exit(1);
  });
  // Where nothing can be said, the way it ends says it.
  process.stderr.on('error', () => {});
  process.exitCode = await ended(command, {
    args: process.argv.slice(2),
    input: process.stdin,
    output: process.stdout,
    errors: process.stderr,
  });
}
