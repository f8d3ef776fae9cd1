import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

export type Read =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: 'folder' | 'too large' };

const PIECE = 64 * 1024;

/**
 * Reads a file's text, of so many bytes at most. A file tells its size before it is read; a pipe or a device does not,
 * and is read no further than that. Throws what the system says.
 */
export function readCapped(file: string, most: number): Read {
  const at = openSync(file, 'r');
  try {
    const about = fstatSync(at);
    if (about.isDirectory()) return { ok: false, why: 'folder' };
    if (about.isFile() && about.size > most) return { ok: false, why: 'too large' };
    const pieces: Buffer[] = [];
    let size = 0;
    for (;;) {
      const piece = Buffer.alloc(PIECE);
      const count = readSync(at, piece, 0, PIECE, null);
      if (count === 0) return { ok: true, text: Buffer.concat(pieces).toString('utf8') };
      size += count;
      if (size > most) return { ok: false, why: 'too large' };
      pieces.push(piece.subarray(0, count));
    }
  } finally {
    closeSync(at);
  }
}
