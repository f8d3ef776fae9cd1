import { resolve } from 'node:path';
import { build } from 'vite';
import { serve } from './serve.ts';

const PORT = Number(process.env.PORT ?? 4178);

await build({ logLevel: 'warn' });
const { address } = await serve(resolve('dist'), PORT);
process.stdout.write(
  `Sternmount is at ${address}\nIt is served on this machine only. Stop it with Ctrl+C.\n`,
);
