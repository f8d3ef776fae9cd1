import type { Guard } from './program.ts';
import type { Step } from './steps.ts';

const keyOf = ({ slot, when }: Guard): string => `${slot} ${when}`;

/**
 * Steps whose answer is looked at only where an IF takes their branch. The engine works out both branches, but the one
 * not taken changes nothing. A step that comes before its condition cannot ask it and has no guard.
 */
export function guardsOf(steps: readonly Step[], wanted: ReadonlySet<number>): ReadonlyMap<number, Guard> {
  const guards = new Map<number, Guard>();
  const uses = new Map<number, (Guard | undefined)[]>();
  const places = new Map(steps.map(({ out }, place) => [out, place]));
  const isKnownAt = (place: number, { slot }: Guard): boolean => (places.get(slot) ?? -1) < place;
  const use = (slot: number, guard: Guard | undefined): void => {
    const known = uses.get(slot);
    if (known === undefined) uses.set(slot, [guard]);
    else known.push(guard);
  };
  for (const { op, args, out } of steps.toReversed()) {
    const seen = wanted.has(out) ? [undefined] : (uses.get(out) ?? []);
    const [first] = seen;
    const own =
      first !== undefined && seen.every((it) => it !== undefined && keyOf(it) === keyOf(first))
        ? first
        : undefined;
    if (own !== undefined && isKnownAt(places.get(out) ?? -1, own)) guards.set(out, own);
    const [condition = 0] = args;
    args.forEach((arg, i) => {
      const branch = op === 'IF' && i > 0 ? { slot: condition, when: i === 1 } : own;
      use(arg, branch);
    });
  }
  return guards;
}
