import type { Page } from 'playwright-core';

/** Studies that take longest, each in its own place of the page. */
const STUDIES = ['map', 'odds', 'proposals'] as const;

/** Longest wait for a study's answer, ms. */
const PATIENCE = 120_000;

/**
 * Opens each study's place and times, until its answer is drawn, the longest that the page let nothing else in, ms. The
 * view itself is loaded and drawn meanwhile, so this is the whole of what an owner could feel.
 */
export async function longestTasks(page: Page): Promise<Record<string, number>> {
  const found: Record<string, number> = {};
  for (const study of STUDIES) {
    found[study] = await page.evaluate(
      async ([name, patience]) => {
        const channel = new MessageChannel();
        let last = performance.now();
        let longest = 0;
        let isOver = false;
        channel.port1.onmessage = () => {
          const now = performance.now();
          longest = Math.max(longest, now - last);
          last = now;
          if (!isOver) channel.port2.postMessage(undefined);
        };
        channel.port2.postMessage(undefined);
        location.hash = `#/studies/${name}`;
        const begun = performance.now();
        for (;;) {
          const view = document.querySelector(`[data-view="${name}"]`);
          if (view !== null && view.getAttribute('aria-busy') !== 'true') break;
          if (performance.now() - begun > patience) throw new Error(`The study ${name} gave no answer.`);
          await new Promise((done) => setTimeout(done, 10));
        }
        isOver = true;
        return Math.round(longest * 10) / 10;
      },
      [study, PATIENCE] as const,
    );
  }
  return found;
}
