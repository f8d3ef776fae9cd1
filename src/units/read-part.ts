import type { Found } from './found.ts';
import { type Fraction, fraction } from './fraction.ts';
import { Refusal } from './refusal.ts';
import type { Token } from './token.ts';

const ONE_CHARACTER_FRACTIONS: ReadonlyMap<string, Fraction> = new Map(
  Array.from('¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞', (sign) => {
    const [over = '', under = ''] = sign.normalize('NFKC').split('⁄');
    return [sign, fraction(BigInt(over), BigInt(under))];
  }),
);

const WHOLE = /^\d+$/;

/** Whether digits stand alone, without a decimal sign or a power of ten. */
export const isPlainWhole = (text: string): boolean => WHOLE.test(text);

/** A fraction alone, 3/8 or ⅜; undefined when the tokens hold something else. */
export const readPart = (tokens: readonly Token[], at: number): Found<Fraction> | Refusal | undefined => {
  const first = tokens[at];
  const single = first?.kind === 'part' ? ONE_CHARACTER_FRACTIONS.get(first.text) : undefined;
  if (single !== undefined) return { value: single, next: at + 1 };
  if (first?.kind !== 'number' || tokens[at + 1]?.kind !== 'slash') return undefined;
  const last = tokens[at + 2];
  if (last?.kind !== 'number') return new Refusal('there is no number under the line');
  if (!isPlainWhole(first.text) || !isPlainWhole(last.text)) {
    return new Refusal('the numbers over and under the line are whole numbers, as in 3/8');
  }
  const under = BigInt(last.text);
  if (under === 0n) return new Refusal('the number under the line cannot be 0');
  return { value: fraction(BigInt(first.text), under), next: at + 3 };
};
