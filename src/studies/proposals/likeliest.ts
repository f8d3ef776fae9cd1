import { seeded } from '../../calc/uncertainty/seeded.ts';
import type { Progress } from '../study.ts';
import type { Mount, ProposalsAsk } from './ask.ts';
import { type Bench, type Genes, genesAt, type Watch } from './bench.ts';
import { Archive, frontOf } from './front.ts';
import type { MountOdds } from './mount-odds.ts';
import { search } from './search.ts';

/**
 * From mounts that keep every limit, a second search that climbs the odds in place of the least room. Its odds are to
 * first order, with the spreads of the mount that has the most room: they change little from one mount to another.
 */
export function* likeliest(
  bench: Bench,
  odds: MountOdds,
  ask: ProposalsAsk,
  archive: Archive,
  evaluations: number,
  watch: Watch,
): Generator<Progress, Archive, void> {
  const roomiest = frontOf(archive.mounts);
  const [top] = roomiest;
  if (top === undefined) return archive;
  bench.reckonOdds(yield* odds.deviationsAt(top.values));
  bench.climbsOdds = true;
  const first: Genes[] = roomiest.map((it) => genesAt(ask.freed, bench.inputs, it.values));
  yield* search(bench, { freed: ask.freed, random: seeded(ask.seed + 2), evaluations, watch, first });
  bench.climbsOdds = false;
  // What was found before is looked at again, now with its odds.
  const reckoned = new Archive();
  const found = archive.mounts;
  const put = (mount: () => Mount, failing: readonly number[]): void => {
    if (failing.length === 0) reckoned.put(mount());
  };
  bench.look(
    found.map((it) => it.values),
    put,
  );
  return reckoned;
}
