import type { Units } from '../plan/plan.ts';
import { formatLength } from '../units/format-length.ts';
import { formatNumber } from '../units/format-number.ts';

/** Most decimals with which two figures are told apart. */
const MOST_DECIMALS = 6;

const IMMERSION = 'rudder_immersion';

/** Results that are shares of a whole, told in per cent. */
const isShare = (result: string): boolean => result.endsWith('_utilisation') || result === IMMERSION;

function figure(
  value: number,
  result: string,
  unit: string,
  units: Units,
  decimals: number | undefined,
): string {
  if (isShare(result)) return `${formatNumber(value * 100, '–', decimals ?? 0)} %`;
  if (unit !== 'mm') return formatNumber(value, unit, decimals);
  return formatLength(value, {
    unit: units === 'in' ? 'in' : 'mm',
    ...(decimals === undefined ? {} : { decimals }),
  });
}

/**
 * Values of one result as figures that read alike only where the values are alike, and like 0 only where they are 0:
 * with the usual decimals if those do, else with as few more as it takes. Values closer than six decimals can tell read
 * alike with the usual ones.
 */
export function figuresApart(
  values: readonly number[],
  result: string,
  unit: string,
  units: Units,
): readonly string[] {
  const at = (decimals: number | undefined): readonly string[] =>
    values.map((it) => figure(it, result, unit, units, decimals));
  const isTelling = (decimals: number | undefined): boolean => {
    const texts = [...at(decimals), figure(0, result, unit, units, decimals)].map((it) =>
      it.replace(/\.0+(?!\d)/, ''),
    );
    return new Set(texts).size === new Set([...values, 0]).size;
  };
  const tried = [undefined, ...Array.from({ length: MOST_DECIMALS }, (_, i) => i + 1)];
  return at(tried.find(isTelling));
}
