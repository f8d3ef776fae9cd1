import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, relative, sep } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';

/** One file of the page as it is sent. */
export interface ServedFile {
  readonly type: string;
  readonly tag: string;
  readonly plain: Buffer;
  /** Compressed, where that makes it smaller. */
  readonly brotli: Buffer | undefined;
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.ico': 'image/x-icon',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

const TEXT = /^text|json|svg/;

const QUALITY = { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } };

function fileOf(path: string): ServedFile {
  const plain = readFileSync(path);
  const type = TYPES[extname(path)] ?? 'application/octet-stream';
  return {
    type,
    tag: `"${createHash('sha256').update(plain).digest('base64url').slice(0, 22)}"`,
    plain,
    brotli: TEXT.test(type) ? brotliCompressSync(plain, QUALITY) : undefined,
  };
}

/** A built page's files by their paths, read once: what becomes of the folder later changes nothing that is served. */
export function servedFiles(folder: string): ReadonlyMap<string, ServedFile> {
  const files = new Map<string, ServedFile>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    files.set(`/${relative(folder, path).split(sep).join('/')}`, fileOf(path));
  }
  return files;
}
