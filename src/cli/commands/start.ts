import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { asksForHelp, readArguments } from '../arguments.ts';
import { type Command, Refused } from '../exit.ts';
import { helpText } from '../options.ts';
import { checkPort, portOf, portRefusal } from '../port.ts';
import { type Served, serve } from '../serve.ts';

const HELP = helpText(
  'Builds the page and serves it on this machine only, at the port that PORT names in the environment.',
  'start --',
  [],
);

/** Builds the page into a folder of this start's own, so that no other start or build meets it, and serves it. */
async function builtAndServed(port: number): Promise<Served> {
  const outDir = mkdtempSync(join(tmpdir(), 'sternmount-'));
  try {
    // The builder takes a second to load, which a port that is refused need not wait for.
    const { build } = await import('vite');
    await build({ logLevel: 'warn', build: { outDir, emptyOutDir: true } });
    return await serve(outDir, port).catch((error: unknown) => {
      throw portRefusal(port, error);
    });
  } finally {
    rmSync(outDir, { recursive: true, force: true });
  }
}

/** Builds and serves the page until it is stopped. */
export const start: Command = async ({ args, output }) => {
  if (asksForHelp(args)) {
    output.write(HELP);
    return;
  }
  const given = readArguments(args, []);
  if ('why' in given) throw new Refused(given.why);
  const port = portOf(process.env.PORT);
  await checkPort(port);
  const { address } = await builtAndServed(port);
  output.write(`Sternmount is at ${address}\nIt is served on this machine only. Stop it with Ctrl+C.\n`);
};
