import type { Freed, Mount } from './ask.ts';
import type { Bench } from './bench.ts';

/** Room that is lost to arithmetic alone. */
const NOISE = 1e-9;

/**
 * A mount with every choice back where it stands now that may be without any loss, so that a proposal changes only what
 * it must.
 */
export function tidied(
  mount: Mount,
  present: readonly number[],
  freed: readonly Freed[],
  bench: Bench,
): Mount {
  let best = mount;
  for (let round = 0; round < 2; round++) {
    const before = best;
    for (const { moves } of freed) {
      const places = moves.map((it) => bench.inputs.indexOf(it.input));
      if (places.every((at) => best.values[at] === present[at])) continue;
      const values = best.values.map((value, at) => (places.includes(at) ? (present[at] as number) : value));
      const back = values.some((it) => Number.isNaN(it)) ? undefined : bench.mountAt(values);
      if (back === undefined || back.failing.length > 0) continue;
      const isNoWorse =
        back.least >= best.least - NOISE &&
        !(back.shims > best.shims) &&
        !(back.bolts > best.bolts) &&
        !((back.fails ?? 0) > (best.fails ?? 0) * (1 + NOISE));
      if (isNoWorse) best = back;
    }
    if (best === before) break;
  }
  return best;
}
