const STEPS = [1, 2, 5, 10];

/**
 * Round values that cover a range, about `count` of them, the first at or below it and the last at or above. `whole`
 * keeps them to whole numbers; `of` is the size of the unit they are round in.
 */
export function niceTicks(
  low: number,
  high: number,
  count: number,
  { whole = false, of = 1 } = {},
): number[] {
  if (!(high > low)) return [low];
  const rough = (high - low) / of / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const found = (STEPS.find((it) => it * power >= rough * (1 - 1e-9)) ?? 10) * power;
  const step = (whole ? Math.max(1, Math.round(found)) : found) * of;
  const first = Math.floor(low / step + 1e-9);
  const last = Math.ceil(high / step - 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** A tick's figure in its unit. */
export const tickText = (value: number, of = 1): string =>
  String(Number((value / of).toPrecision(6))).replace('-', '−');
