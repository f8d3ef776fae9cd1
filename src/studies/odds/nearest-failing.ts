import { normalQuantile } from '../../calc/uncertainty/normal.ts';
import { seeded } from '../../calc/uncertainty/seeded.ts';
import type { Progress } from '../study.ts';
import type { ScoredRoom } from './rooms-at.ts';

const ROUNDS = 40;
/** Points tried in other directions in each round, and how much nearer they are. */
const TRIED = 48;
const NEARER = [0.3, 0.1, 0.03, 0.01, 0.003, 0.001];
/** Places looked at along a way. */
const PLACES = 16;
/** A search that turns by less than this has come to its end. */
const LEAST_TURN = 1e-3;

const size = (z: readonly number[]): number => Math.hypot(...z);
const times = (z: readonly number[], by: number): number[] => z.map((it) => it * by);

/** The failing place of several that lies nearest to the readings. */
function* nearestOf(room: ScoredRoom, places: readonly (readonly number[])[]) {
  const { fails } = yield* room.at(places);
  return places.reduce<readonly number[] | undefined>((best, it, n) => {
    if (fails[n] !== true) return best;
    return best === undefined || size(it) < size(best) ? it : best;
  }, undefined);
}

/**
 * From a failing point to the nearest failing one about it, by trying alone: for rooms that jump or have a corner,
 * where slopes lead nowhere.
 */
export function* nearestFailing(
  room: ScoredRoom,
  from: readonly number[],
  seed: number,
): Generator<Progress, readonly number[], void> {
  const random = seeded(seed);
  let best: readonly number[] = from;
  let [low, high] = [0, 1];
  for (let round = 0; round < 2; round++) {
    const [least, width]: readonly [number, number] = [low, (high - low) / PLACES];
    const places = Array.from({ length: PLACES }, (_, n) => times(from, least + (n + 1) * width));
    best = (yield* nearestOf(room, places)) ?? best;
    high = size(best) / size(from);
    low = high - width;
  }
  let turn = 0.5;
  for (let round = 0; round < ROUNDS && turn > LEAST_TURN; round++) {
    const [here, far]: readonly [readonly number[], number] = [best, size(best)];
    const pulled = here.flatMap((it, i) => (it === 0 ? [] : [here.with(i, 0), here.with(i, it / 2)]));
    const turned = Array.from({ length: TRIED }, (_, n) => {
      const aside = here.map((it) => it + (turn * far * normalQuantile(random())) / Math.sqrt(here.length));
      return times(aside, (far * (1 - (NEARER[n % NEARER.length] ?? 0))) / size(aside));
    });
    const found = yield* nearestOf(room, [...pulled, ...turned]);
    if (found === undefined || size(found) >= far) turn /= 2;
    else best = found;
  }
  return best;
}
