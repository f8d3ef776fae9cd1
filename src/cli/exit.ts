import './sound-compiler.ts';
import type { Readable, Writable } from 'node:stream';

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
  // A reader that closes early, as a pager does, is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    process.exit(error.code === 'EPIPE' ? 0 : 1);
  });
  process.exitCode = await ended(command, {
    args: process.argv.slice(2),
    input: process.stdin,
    output: process.stdout,
    errors: process.stderr,
  });
}
