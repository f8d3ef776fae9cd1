interface Group {
  readonly members: readonly number[];
  /** Where the group would best stand, less what stands before each. */
  readonly wanted: number;
}

/**
 * Moves places on a line apart until each has its room, as little as may be altogether and in the same order, between
 * two ends: neighbours that are too close share the way. When there is not room for all, they stand closer. The room
 * is one figure for all or one for each, half of it on either side.
 */
export function spread(
  wanted: readonly number[],
  room: number | readonly number[],
  from: number,
  to: number,
): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const half = (i: number): number => (typeof room === 'number' ? room : (room[i] ?? 0)) / 2;
  const full = order.reduce((sum, i, k) => sum + (k === 0 ? 0 : half(order[k - 1] ?? 0) + half(i)), 0);
  const share = full === 0 ? 1 : Math.min(1, (to - from) / full);
  const off: number[] = [];
  for (const [k, i] of order.entries()) {
    const before = order[k - 1];
    off[i] = before === undefined ? 0 : (off[before] ?? 0) + (half(before) + half(i)) * share;
  }
  // Less what stands before it, each place need only be at or after its neighbour's.
  const end = off[order.at(-1) ?? 0] ?? 0;
  const best = (members: readonly number[]): number => {
    const mean = members.reduce((sum, it) => sum + (wanted[it] ?? 0) - (off[it] ?? 0), 0) / members.length;
    return Math.min(Math.max(mean, from), to - end);
  };
  const groups: Group[] = [];
  for (const i of order) {
    let last: Group = { members: [i], wanted: best([i]) };
    for (let before = groups.at(-1); before !== undefined; before = groups.at(-1)) {
      if (before.wanted <= last.wanted + 1e-9) break;
      groups.pop();
      const members = [...before.members, ...last.members];
      last = { members, wanted: best(members) };
    }
    groups.push(last);
  }
  const at: number[] = [];
  for (const { members, wanted: first } of groups) for (const i of members) at[i] = first + (off[i] ?? 0);
  return at;
}
