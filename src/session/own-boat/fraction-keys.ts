/** Every sixteenth of an inch below one, reduced, in order. */
export const FRACTION_KEYS: readonly (readonly [over: number, under: number])[] = Array.from(
  { length: 15 },
  (_, at) => {
    let [over, under] = [at + 1, 16];
    while (over % 2 === 0) [over, under] = [over / 2, under / 2];
    return [over, under];
  },
);
