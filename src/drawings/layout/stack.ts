/** Something that wants to stand at `at`, takes up `size` round it, and yields to what has a lower `rank`. */
export interface Wanted {
  readonly at: number;
  readonly size: number;
  readonly rank: number;
}

/**
 * Places for things in a row between two ends, in order, `gap` apart and as near to where they want to be as that
 * allows. Those that find no room are null, last in rank first.
 */
export function stack(items: readonly Wanted[], low: number, high: number, gap: number): (number | null)[] {
  const order = items.map((_, i) => i).sort((a, b) => (items[a]?.at ?? 0) - (items[b]?.at ?? 0));
  let kept = order;
  const taken = (list: readonly number[]): number =>
    list.reduce((sum, i) => sum + (items[i]?.size ?? 0), 0) + gap * Math.max(0, list.length - 1);
  while (kept.length > 0 && taken(kept) > high - low) {
    const worst = kept.reduce((a, b) => ((items[a]?.rank ?? 0) >= (items[b]?.rank ?? 0) ? a : b));
    kept = kept.filter((i) => i !== worst);
  }
  // Neighbours that would overlap are joined into one cluster, which then stands at its members' mean wish.
  interface Cluster {
    members: number[];
    size: number;
    wish: number;
  }
  const clusters: Cluster[] = [];
  const start = (c: Cluster): number =>
    Math.min(Math.max(c.wish / c.members.length - c.size / 2, low), high - c.size);
  for (const i of kept) {
    const item = items[i];
    if (item === undefined) continue;
    let cluster: Cluster = { members: [i], size: item.size, wish: item.at };
    for (;;) {
      const before = clusters.at(-1);
      if (before === undefined || start(before) + before.size + gap <= start(cluster)) break;
      clusters.pop();
      // Wishes are for the middle of the joined cluster, so each side is moved by the other's size.
      const size = before.size + gap + cluster.size;
      const wish =
        before.wish +
        ((cluster.size + gap) / 2) * before.members.length +
        cluster.wish -
        ((before.size + gap) / 2) * cluster.members.length;
      cluster = { members: [...before.members, ...cluster.members], size, wish };
    }
    clusters.push(cluster);
  }
  const places: (number | null)[] = items.map(() => null);
  for (const cluster of clusters) {
    let at = start(cluster);
    for (const i of cluster.members) {
      const size = items[i]?.size ?? 0;
      places[i] = at + size / 2;
      at += size + gap;
    }
  }
  return places;
}
