import { build, preview } from 'vite';

/** The one place the page is served at: this machine only. */
const HOST = '127.0.0.1';
const PORT = Number(process.env.PORT ?? 4178);

await build({ logLevel: 'warn' });
const server = await preview({ logLevel: 'warn', preview: { host: HOST, port: PORT, strictPort: false } });
const address = server.resolvedUrls?.local[0] ?? `http://${HOST}:${PORT}/`;
process.stdout.write(
  `Sternmount is at ${address}\nIt is served on this machine only. Stop it with Ctrl+C.\n`,
);
