/** Longest that a piece of work may hold the page at a time, ms. */
const SLICE = 8;

/**
 * Does work that yields between its pieces, so many at a time that the page can take a key in between. Gives back what
 * stops it.
 */
export function inTurns(work: Generator<void, void, void>): () => void {
  let isOver = false;
  const go = (): void => {
    const end = performance.now() + SLICE;
    while (!isOver && performance.now() < end) isOver = work.next().done === true;
    if (!isOver) setTimeout(go);
  };
  go();
  return () => {
    isOver = true;
  };
}
