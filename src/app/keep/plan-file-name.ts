/** Names that some systems keep for devices. */
const DEVICES = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

const LONGEST = 60;

/** A title as the name of a plan file: small letters and digits of any script, joined by hyphens. */
export function planFileName(title: string): string {
  const words = title
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\p{M}]+/gu, '-');
  const cut = [...words]
    .slice(0, LONGEST)
    .join('')
    .replace(/^-+|-+$/g, '');
  return `${cut === '' || DEVICES.test(cut) ? `plan${cut === '' ? '' : `-${cut}`}` : cut}.plan.json`;
}
