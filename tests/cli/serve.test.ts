import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { type AddressInfo, connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { start } from '../../src/cli/commands/start.ts';
import { ended, Refused } from '../../src/cli/exit.ts';
import { checkPort, portOf } from '../../src/cli/port.ts';
import { type Served, serve } from '../../src/cli/serve.ts';

const folder = mkdtempSync(join(tmpdir(), 'sternmount-serve-'));
const PAGE = '<!doctype html><title>Page</title>'.repeat(20);
let served: Served;

beforeAll(async () => {
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'index.html'), PAGE);
  writeFileSync(join(folder, 'assets', 'part.js'), 'export const part = 1;');
  served = await serve(folder);
});
afterAll(async () => {
  await served.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Sends a request as it is written, which a client of good manners would not, and gives back the answer's first line. */
const raw = (request: string): Promise<string> =>
  new Promise((done, fail) => {
    const socket = connect(Number(new URL(served.address).port), '127.0.0.1', () => socket.write(request));
    let text = '';
    socket.setEncoding('utf8').on('data', (piece) => {
      text += piece;
    });
    socket.on('error', fail);
    socket.on('close', () => done(text.split('\r\n', 1)[0] ?? ''));
  });

describe('the server of the page', () => {
  it('answers with the page, whole, whatever part is asked for', async () => {
    for (const range of ['bytes=5-1', 'bytes=0-3', 'bytes=-', 'bytes=999999-', 'nonsense']) {
      const answer = await fetch(served.address, { headers: { Range: range } });
      expect([answer.status, await answer.text()]).toEqual([200, PAGE]);
    }
  });

  it('goes on answering when what it serves has gone from the disk', async () => {
    const part = join(folder, 'assets', 'part.js');
    rmSync(part);
    const answer = await fetch(`${served.address}assets/part.js`);
    expect(answer.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
    expect(await answer.text()).toBe('export const part = 1;');
    writeFileSync(join(folder, 'index.html'), 'another build');
    expect(await (await fetch(served.address)).text()).toBe(PAGE);
  });

  it.each([
    ['what is not there', 'GET /nowhere.js HTTP/1.1', 404],
    ['a path out of the folder', 'GET /../../etc/passwd HTTP/1.1', 404],
    ['a path that cannot be read', 'GET /%zz HTTP/1.1', 404],
    ['a method it does not know', 'POST / HTTP/1.1', 405],
    ['a broken range', 'GET / HTTP/1.1\r\nRange: bytes=5-1', 200],
  ])('answers %s and lives', async (_, request, status) => {
    expect(await raw(`${request}\r\nHost: page\r\nConnection: close\r\n\r\n`)).toContain(` ${status} `);
    expect((await fetch(served.address)).status).toBe(200);
  });

  it('lives through what is no request', async () => {
    expect(await raw('nonsense\r\n\r\n')).toContain(' 400 ');
    expect((await fetch(served.address)).status).toBe(200);
  });

  it('sends texts compressed, and nothing to who has it already', async () => {
    const first = await fetch(served.address, { headers: { 'Accept-Encoding': 'gzip, br' } });
    expect(first.headers.get('content-encoding')).toBe('br');
    expect(first.headers.get('content-security-policy')).toContain("script-src 'self'");
    const again = await fetch(served.address, {
      headers: { 'If-None-Match': first.headers.get('etag') ?? '' },
    });
    expect(again.status).toBe(304);
    const bare = await fetch(served.address, { headers: { 'Accept-Encoding': 'identity' } });
    expect(bare.headers.get('content-encoding')).toBeNull();
  });
});

describe('the port', () => {
  let taken: Server;
  beforeAll(async () => {
    taken = createServer();
    await new Promise<void>((done) => taken.listen(0, '127.0.0.1', done));
  });
  afterAll(() => new Promise((done) => taken.close(done)));

  it('is the one named, or the usual one', () => {
    expect([portOf('4179'), portOf(''), portOf(undefined), portOf('0')]).toEqual([4179, 4178, 4178, 0]);
  });

  it.each(['abc', '-1', '65536', '4178.5', '4178 '])('cannot be “%s”', (text) => {
    expect(() => portOf(text)).toThrow(
      new Refused(
        `PORT cannot be “${text}”; it takes a whole number from 0 to 65535, as in PORT=4179 npm start.`,
      ),
    );
  });

  it('that is taken is named, and no other is taken in its place', async () => {
    const { port } = taken.address() as AddressInfo;
    const refusal = new RegExp(
      `^Port ${port} cannot be used: another program uses it.*PORT=${port + 1} npm start`,
    );
    await expect(checkPort(port)).rejects.toThrow(refusal);
    await expect(serve(folder, port)).rejects.toThrow(/EADDRINUSE/);
  });

  it('is refused in one sentence before anything is built', async () => {
    const [output, errors] = [new PassThrough(), new PassThrough()];
    const before = process.env.PORT;
    process.env.PORT = 'abc';
    const code = await ended(start, { args: [], input: Readable.from([]), output, errors });
    if (before === undefined) delete process.env.PORT;
    else process.env.PORT = before;
    expect(code).toBe(2);
    expect(output.read()).toBeNull();
    expect(String(errors.read())).toMatch(/^PORT cannot be “abc”[^\n]*\.\n$/);
  });
});
