import { describe, expect, it, vi } from 'vitest';
import { browserWorld } from '../../../src/app/keep/browser-world.ts';

/** A window with as much of it as is used. */
function page(more: object = {}) {
  const document = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  const window = Object.assign(new EventTarget(), {
    document,
    navigator: {},
    crypto: globalThis.crypto,
    indexedDB: { open: vi.fn() },
    setTimeout: globalThis.setTimeout,
    clearTimeout: globalThis.clearTimeout,
    ...more,
  });
  return { window: window as unknown as Parameters<typeof browserWorld>[0], document, events: window };
}

describe('the world of a browser', () => {
  it('hears when the page goes and when it is hidden, not when it is shown', () => {
    const { window, document, events } = page();
    const listener = vi.fn();
    const stop = browserWorld(window).onHide(listener);
    document.dispatchEvent(new Event('visibilitychange'));
    expect(listener).toHaveBeenCalledTimes(0);
    document.visibilityState = 'hidden';
    document.dispatchEvent(new Event('visibilitychange'));
    expect(listener).toHaveBeenCalledTimes(1);
    events.dispatchEvent(new Event('pagehide'));
    expect(listener).toHaveBeenCalledTimes(2);
    stop();
    events.dispatchEvent(new Event('pagehide'));
    document.dispatchEvent(new Event('visibilitychange'));
    expect(listener).toHaveBeenCalledTimes(2);
  });

  it('does without what an old browser lacks', () => {
    const world = browserWorld(page().window);
    expect([world.locks, world.storage, world.channel]).toEqual([undefined, undefined, undefined]);
    const bare = browserWorld(
      page({
        crypto: {
          getRandomValues: (it: Uint8Array) =>
            globalThis.crypto.getRandomValues(it as Uint8Array<ArrayBuffer>),
        },
      }).window,
    );
    expect(bare.newId()).toMatch(/^[0-9a-f]{32}$/);
    expect(bare.newId()).not.toBe(bare.newId());
  });

  it('passes on what there is', () => {
    const locks = {};
    const storage = { persist: () => Promise.resolve(true) };
    class Line {
      readonly name: string;
      constructor(name: string) {
        this.name = name;
      }
    }
    const world = browserWorld(page({ navigator: { locks, storage }, BroadcastChannel: Line }).window);
    expect(world.locks).toBe(locks);
    expect(world.storage).toBe(storage);
    expect(world.channel?.('a')).toEqual(new Line('a'));
  });

  it('refuses each use of a store that the browser does not hand out', () => {
    const { window } = page();
    Object.defineProperty(window, 'indexedDB', {
      get: () => {
        throw new DOMException('', 'SecurityError');
      },
    });
    const world = browserWorld(window);
    expect(() => world.indexedDB.open('a')).toThrow(DOMException);
  });

  it('waits, unless told not to', () => {
    vi.useFakeTimers();
    const { window } = page({
      setTimeout: (run: () => void, ms: number) => setTimeout(run, ms),
      clearTimeout: (timer: number) => clearTimeout(timer),
    });
    const { clock } = browserWorld(window);
    const [one, two] = [vi.fn(), vi.fn()];
    clock.after(300, one);
    clock.after(300, two)();
    vi.advanceTimersByTime(299);
    expect(one).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1);
    expect(one).toHaveBeenCalledOnce();
    expect(two).not.toHaveBeenCalled();
    vi.useRealTimers();
  });
});
