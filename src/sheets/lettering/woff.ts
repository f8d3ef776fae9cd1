const SIGNATURE = 0x774f4646;
const HEAD = 44;
const ENTRY = 20;

async function inflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

const padded = (length: number): number => (length + 3) & ~3;

/**
 * The TrueType font inside a WOFF 1.0 file (W3C Recommendation, 2012): the same tables, unpacked. Throws when the file
 * is not a WOFF.
 */
export async function fontOfWoff(file: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const from = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (file.byteLength < HEAD || from.getUint32(0) !== SIGNATURE)
    throw new Error('The lettering is not a WOFF file.');
  const count = from.getUint16(12);
  const tables = await Promise.all(
    Array.from({ length: count }, async (_, i) => {
      const at = HEAD + i * ENTRY;
      const [start, packed, length] = [4, 8, 12].map((it) => from.getUint32(at + it)) as [
        number,
        number,
        number,
      ];
      const stored = file.slice(start, start + packed);
      return {
        tag: from.getUint32(at),
        checksum: from.getUint32(at + 16),
        length,
        bytes: packed < length ? await inflated(stored) : stored,
      };
    }),
  );
  let place = 12 + 16 * count;
  const font = new Uint8Array(tables.reduce((sum, it) => sum + padded(it.length), place));
  const to = new DataView(font.buffer);
  const power = Math.floor(Math.log2(count));
  to.setUint32(0, from.getUint32(4));
  to.setUint16(4, count);
  to.setUint16(6, 16 * 2 ** power);
  to.setUint16(8, power);
  to.setUint16(10, 16 * (count - 2 ** power));
  for (const [i, { tag, checksum, length, bytes }] of tables.entries()) {
    const at = 12 + 16 * i;
    to.setUint32(at, tag);
    to.setUint32(at + 4, checksum);
    to.setUint32(at + 8, place);
    to.setUint32(at + 12, length);
    font.set(bytes, place);
    place += padded(length);
  }
  return font;
}
