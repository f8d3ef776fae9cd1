import type { Counts, Filling } from './kinds.ts';
import type { Work } from './work.ts';

/**
 * Every filling of one tube that holds the longest piece wanted and wastes no more than `waste`. A filling in which a
 * longer piece, left over elsewhere, could stand in for one of its pieces or for its rest is passed over: changing the
 * two places makes another plan with as many tubes, so none is lost (dominance; Martello and Toth 1990, section 8.5). Ends
 * early when the work does.
 */
export function* fillingsWithLongest(
  tube: number,
  sizes: readonly number[],
  wanted: Counts,
  waste: number,
  work: Work,
): Generator<Filling> {
  const longest = wanted.findIndex((count) => count > 0);
  const spare = [...wanted];
  spare[longest] = (spare[longest] as number) - 1;
  const filling = [longest];

  /** Whether a longer spare piece fits in place of one of these, or any spare piece in the rest. */
  const isBeaten = (rest: number): boolean => {
    // From the shortest up: `room` is what a spare piece finds once the longest piece shorter than it is taken out.
    let room = rest;
    let at = filling.length - 1;
    for (let kind = sizes.length - 1; kind >= longest; kind--) {
      if ((spare[kind] as number) > 0 && (sizes[kind] as number) <= room) return true;
      for (; at > 0 && filling[at] === kind; at--) room = rest + (sizes[kind] as number);
    }
    return false;
  };

  function* add(kind: number, rest: number): Generator<Filling> {
    work.spend(1);
    if (work.isDone) return;
    if (kind === sizes.length) {
      if (rest <= waste && !isBeaten(rest)) yield [...filling];
      return;
    }
    const size = sizes[kind] as number;
    const most = Math.min(spare[kind] as number, Math.floor(rest / size));
    for (let count = 0; count < most; count++) filling.push(kind);
    for (let count = most; count >= 0; count--) {
      spare[kind] = (spare[kind] as number) - count;
      yield* add(kind + 1, rest - count * size);
      spare[kind] = (spare[kind] as number) + count;
      if (count > 0) filling.pop();
    }
  }
  yield* add(longest, tube - (sizes[longest] as number));
}
