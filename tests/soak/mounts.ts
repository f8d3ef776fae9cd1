import { randomBoat } from '../studies/first-mount/random-boats.ts';
import { lookedAt, tried } from '../studies/first-mount/tried.ts';
import type { SoakLine } from './part.ts';

const BOATS = 300;
/** The first boats are those of the tests. */
const FIRST = 51;

/** First mounts for boats drawn at random; where none keeps every limit, another look over a 10 mm grid finds none. */
export function* soakMounts(): Iterable<SoakLine> {
  let held = 0;
  const missed: number[] = [];
  for (let number = FIRST; number < FIRST + BOATS; number++) {
    const boat = randomBoat(number);
    if (tried(boat).failing.length === 0) held++;
    else if (lookedAt(boat) !== undefined) missed.push(number);
  }
  yield {
    name: 'first mounts',
    says: `${held} of ${BOATS} boats with a mount; missed for ${missed.length === 0 ? 'none' : `boats ${missed.join(', ')}`}`,
    ok: missed.length === 0,
  };
}
