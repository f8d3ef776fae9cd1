/** Every way to fill one tube with what is wanted, pieces of each size counted. */
function fillings(sizes: readonly number[], wanted: readonly number[], tube: number): number[][] {
  const [size, ...others] = sizes;
  const [most = 0, ...left] = wanted;
  if (size === undefined) return [[]];
  const counts = Array.from({ length: Math.min(most, Math.floor(tube / size)) + 1 }, (_, count) => count);
  return counts.flatMap((count) =>
    fillings(others, left, tube - count * size).map((rest) => [count, ...rest]),
  );
}

/** The fewest tubes for every number of pieces of a few lengths up to what is wanted, from the fewest for one tube less. */
export function byFillings(sizes: readonly number[], wanted: readonly number[], tube: number): number {
  const all = fillings(sizes, wanted, tube).filter((it) => it.some((count) => count > 0));
  // A number of pieces of each length stands for one place in the table.
  const strides = wanted.map((_, i) =>
    wanted.slice(0, i).reduce((product, count) => product * (count + 1), 1),
  );
  const placeOf = (counts: readonly number[]): number =>
    counts.reduce((sum, count, i) => sum + count * (strides[i] as number), 0);
  const end = placeOf(wanted);
  const fewest = new Array<number>(end + 1).fill(0);
  for (let place = 1; place <= end; place++) {
    const counts = wanted.map((count, i) => Math.floor(place / (strides[i] as number)) % (count + 1));
    let best = Number.POSITIVE_INFINITY;
    for (const filling of all)
      if (filling.every((count, i) => count <= (counts[i] as number)))
        best = Math.min(best, 1 + (fewest[place - placeOf(filling)] as number));
    fewest[place] = best;
  }
  return fewest[end] as number;
}
