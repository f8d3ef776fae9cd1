const LONGEST = 60;

/** A cell's name made from its label: small letters, digits and _, another number at its end while it is taken. */
export function nameFrom(label: string, isRefused: (name: string) => boolean): string {
  const plain = label
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^[_0-9]+|_+$/g, '')
    .slice(0, LONGEST);
  if (plain === '') return '';
  if (!isRefused(plain)) return plain;
  for (let n = 2; n < 1000; n++) {
    const name = `${plain}_${n}`;
    if (!isRefused(name)) return name;
  }
  return '';
}
