/** ITU-T V.42, 8.1.1.6.2, its polynomial with the bits in the order they are sent. */
const POLYNOMIAL = 0xedb88320;

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  return rest;
});

/** The 32-bit frame check sequence of a text's UTF-8 bytes: tells a text that was damaged from one that was not. */
export function checksum(text: string): number {
  let rest = 0xffffffff;
  for (const byte of new TextEncoder().encode(text)) {
    rest = (rest >>> 8) ^ (TABLE[(rest ^ byte) & 0xff] ?? 0);
  }
  return (rest ^ 0xffffffff) >>> 0;
}
