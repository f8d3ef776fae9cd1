import type { World } from './world.ts';

/** The right to write one plan. */
export interface WriterLock {
  readonly release: () => void;
  /** Fulfilled when another window took it. */
  readonly lost: Promise<void>;
}

/** Milliseconds that another window gets to let go; a window that is being reloaded needs a moment. */
const PATIENCE = 1_000;

const free = (): WriterLock => ({ release: () => undefined, lost: new Promise(() => undefined) });

/**
 * Takes the right to write a plan; undefined when another window has it. With `steal`, it is taken from there. Where
 * the browser has no locks every window may write, and each save still looks whether it was overtaken.
 */
export function writerLock(
  { locks, clock }: Pick<World, 'locks' | 'clock'>,
  plan: string,
  steal = false,
): Promise<WriterLock | undefined> {
  if (locks === undefined) return Promise.resolve(free());
  return new Promise((resolve) => {
    const impatience = new AbortController();
    const stopWaiting = steal ? () => undefined : clock.after(PATIENCE, () => impatience.abort());
    let tellLost: () => void = () => undefined;
    const lost = new Promise<void>((tell) => {
      tellLost = tell;
    });
    const held = () =>
      new Promise<void>((release) => {
        stopWaiting();
        resolve({ release, lost });
      });
    const options = steal ? { steal: true } : { signal: impatience.signal };
    locks.request(`sternmount-plan-${plan}`, options, held).catch(() => {
      stopWaiting();
      tellLost();
      resolve(undefined);
    });
  });
}
