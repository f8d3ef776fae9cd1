/** Input that is refused: the command ends with 2 and this one sentence. */
export class Refused extends Error {}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Runs a command: 0 when it answers, 2 with a sentence when it refuses its input, 1 for a fault of our own. */
export async function run(command: () => Promise<void>): Promise<void> {
  // A reader that closes early, as a pager does, is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    process.exit(error.code === 'EPIPE' ? 0 : 1);
  });
  try {
    await command();
  } catch (error) {
    if (error instanceof Refused) {
      process.stderr.write(`${oneLine(error.message)}\n`);
      process.exitCode = 2;
      return;
    }
    const what = error instanceof Error ? error.message : String(error);
    process.stderr.write(`Sternmount failed on something of its own: ${oneLine(what)}\n`);
    process.exitCode = 1;
  }
}
