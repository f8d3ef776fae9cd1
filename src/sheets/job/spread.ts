interface Group {
  readonly members: number[];
  /** Where the first member would best stand. */
  wanted: number;
}

/**
 * Moves places on a line apart until each has its room, as little as may be altogether and in the same order, between
 * two ends: neighbours that are too close share the way. When there is not room for all, they stand closer.
 */
export function spread(wanted: readonly number[], room: number, from: number, to: number): number[] {
  const count = wanted.length;
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const step = count > 1 ? Math.min(room, (to - from) / (count - 1)) : room;
  const best = ({ members }: Pick<Group, 'members'>): number => {
    const mean = members.reduce((sum, it, k) => sum + (wanted[it] ?? 0) - k * step, 0) / members.length;
    return Math.min(Math.max(mean, from), to - (members.length - 1) * step);
  };
  const groups: Group[] = [];
  for (const i of order) {
    let last: Group = { members: [i], wanted: best({ members: [i] }) };
    for (let before = groups.at(-1); before !== undefined; before = groups.at(-1)) {
      if (before.wanted + before.members.length * step <= last.wanted + 1e-9) break;
      groups.pop();
      const members = [...before.members, ...last.members];
      last = { members, wanted: best({ members }) };
    }
    groups.push(last);
  }
  const at: number[] = [];
  for (const { members, wanted: first } of groups)
    for (const [k, i] of members.entries()) at[i] = first + k * step;
  return at;
}
