/** Ends of the middle part that holds the share given of all answers, between two neighbours in proportion. */
export function middlePart(
  values: Float64Array,
  share: number,
): { readonly low: number; readonly high: number } {
  const sorted = values.filter(Number.isFinite).sort();
  const at = (chance: number): number => {
    const place = chance * (sorted.length - 1);
    const [low, high] = [sorted[Math.floor(place)] ?? Number.NaN, sorted[Math.ceil(place)] ?? Number.NaN];
    return low + (place - Math.floor(place)) * (high - low);
  };
  return sorted.length < 2
    ? { low: Number.NaN, high: Number.NaN }
    : { low: at((1 - share) / 2), high: at((1 + share) / 2) };
}
