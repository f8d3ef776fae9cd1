import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';
import sirv from 'sirv';

/** Served to this machine only. */
const HOST = '127.0.0.1';

const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const TEXT = /\.(?:html|js|css|json|svg)$/;

/** Puts a compressed copy beside every text file of a built page. */
function compress(folder: string): void {
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || !TEXT.test(entry.name)) continue;
    const file = join(entry.parentPath, entry.name);
    const options = { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } };
    writeFileSync(`${file}.br`, brotliCompressSync(readFileSync(file), options));
  }
}

export interface Served {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Serves a built page on this machine; port 0 takes any free one, as does a port that is taken. */
export async function serve(folder: string, port = 0): Promise<Served> {
  compress(folder);
  const files = sirv(folder, {
    brotli: true,
    etag: true,
    setHeaders: (response) => {
      response.setHeader('Content-Security-Policy', POLICY);
      response.setHeader('X-Content-Type-Options', 'nosniff');
      response.setHeader('Referrer-Policy', 'no-referrer');
    },
  });
  const server = createServer((request, response) => {
    files(request, response, () => {
      response.statusCode = 404;
      response.end('There is nothing at this address.');
    });
  });
  await new Promise<void>((done, fail) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' && port !== 0) server.listen(0, HOST);
      else fail(error);
    });
    server.once('listening', done);
    server.listen(port, HOST);
  });
  return {
    address: `http://${HOST}:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
}
