import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type ServedFile, servedFiles } from './served-files.ts';

/** Served to this machine only. */
export const HOST = '127.0.0.1';

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

export interface Served {
  readonly address: string;
  readonly close: () => Promise<void>;
}

const say = (response: ServerResponse, status: number, sentence: string): void => {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' });
  response.end(sentence);
};

/** The path that is asked for; undefined for one that cannot be read. */
function pathOf({ url = '/' }: IncomingMessage): string | undefined {
  try {
    const path = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? '/');
    return path === '/' ? '/index.html' : path;
  } catch {
    return undefined;
  }
}

/** Answers one request. A wish for a part of a file is not met: the whole is sent, as RFC 9110, 14.2, allows. */
function answer(
  files: ReadonlyMap<string, ServedFile>,
  request: IncomingMessage,
  response: ServerResponse,
): void {
  const { method, headers } = request;
  if (method !== 'GET' && method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD');
    say(response, 405, 'Nothing can be sent to this address.');
    return;
  }
  const path = pathOf(request);
  const file = path === undefined ? undefined : files.get(path);
  if (file === undefined) {
    say(response, 404, 'There is nothing at this address.');
    return;
  }
  const takesBrotli = /\bbr\b/.test(String(headers['accept-encoding'] ?? ''));
  const body = takesBrotli && file.brotli !== undefined ? file.brotli : file.plain;
  response.setHeader('Content-Security-Policy', POLICY);
  response.setHeader('X-Content-Type-Options', 'nosniff');
  response.setHeader('Referrer-Policy', 'no-referrer');
  response.setHeader('Content-Type', file.type);
  response.setHeader('ETag', file.tag);
  // Asked again each time: a start after a build serves another page at the same address.
  response.setHeader('Cache-Control', 'no-cache');
  response.setHeader('Vary', 'Accept-Encoding');
  if (headers['if-none-match'] === file.tag) {
    response.writeHead(304).end();
    return;
  }
  if (body === file.brotli) response.setHeader('Content-Encoding', 'br');
  response.setHeader('Content-Length', body.length);
  response.end(method === 'HEAD' ? undefined : body);
}

/** Serves a built page on this machine; port 0 takes any free one. Fails where the port is taken. */
export async function serve(folder: string, port = 0): Promise<Served> {
  const files = servedFiles(folder);
  const server = createServer((request, response) => answer(files, request, response));
  await new Promise<void>((done, fail) => {
    server.once('error', fail);
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
