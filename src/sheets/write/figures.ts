/** A number as short as a tenth of a micrometre allows; the same text everywhere. */
export function figure(value: number): string {
  const text = value.toFixed(4).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
