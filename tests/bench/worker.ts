import type { Browser, Page } from 'playwright-core';
import type { FromWorker, ToWorker } from '../../src/session/studies/messages.ts';

/** What went between the page and its worker, and when, ms. */
interface Said {
  readonly at: number;
  readonly to?: ToWorker;
  readonly from?: FromWorker;
}

interface Logging {
  said: Said[];
}

/** Longest wait for a study's answer, ms. */
const PATIENCE = 60_000;

const STUDIES = ['map', 'odds', 'proposals'] as const;

/** Keeps what the page and its worker say to each other. */
const listening = (): void => {
  const log = window as unknown as Logging;
  log.said = [];
  const Plain = window.Worker;
  window.Worker = class extends Plain {
    constructor(...given: ConstructorParameters<typeof Worker>) {
      super(...given);
      this.addEventListener('message', (event: MessageEvent<FromWorker>) => {
        log.said.push({ at: performance.now(), from: event.data });
      });
    }
    override postMessage(message: ToWorker): void {
      log.said.push({ at: performance.now(), to: message });
      super.postMessage(message);
    }
  };
};

const goTo = (page: Page, place: string): Promise<void> =>
  page.evaluate((it) => {
    (window as unknown as Logging).said.length = 0;
    location.hash = `#/${it}`;
  }, place);

const settled = (page: Page, study: string): Promise<unknown> =>
  page.waitForFunction(
    (name) => {
      const view = document.querySelector(`[data-view="${name}"]`);
      return view !== null && view.getAttribute('aria-busy') !== 'true';
    },
    study,
    { timeout: PATIENCE },
  );

/** From the first question asked of the worker to its first report that holds an answer, in part or whole, ms. */
const toFirstAnswer = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const { said } = window as unknown as Logging;
    const asked = said.find(({ to }) => to?.kind === 'ask');
    const id = asked?.to?.kind === 'ask' ? asked.to.id : -1;
    const told = said.find(
      ({ from }) =>
        from?.kind === 'report' &&
        from.id === id &&
        (from.report.state === 'answered' ||
          (from.report.state === 'working' && from.report.progress.soFar !== undefined)),
    );
    return asked === undefined || told === undefined ? Number.NaN : Math.round(told.at - asked.at);
  });

/**
 * First answers of a warm worker, proofs kept and new, and how soon after one question was dropped in the midst of its work
 * it takes up the next, ms. The page hears of it when it has time, so these are the most it can be.
 */
export async function workerTimes(browser: Browser, address: string): Promise<Record<string, unknown>> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.addInitScript(listening);
  await page.goto(address);
  await page.waitForFunction(() =>
    (window as unknown as Logging).said.some(({ from }) => from?.kind === 'ready'),
  );
  const unproved: Record<string, number> = {};
  const proved: Record<string, number> = {};
  for (const study of STUDIES) {
    await goTo(page, `studies/${study}`);
    await settled(page, study);
    unproved[study] = await toFirstAnswer(page);
  }
  // Another plan asks the same questions anew.
  await goTo(page, 'mount');
  await page.locator('[data-view="form"] [data-cell="shim_count"] button.stepper').last().click();
  for (const study of STUDIES) {
    await goTo(page, `studies/${study}`);
    await settled(page, study);
    proved[study] = await toFirstAnswer(page);
  }
  await goTo(page, 'mount');
  await page.locator('[data-view="form"] [data-cell="shim_count"] button.stepper').last().click();
  await goTo(page, 'studies/proposals');
  await page.waitForFunction(() =>
    (window as unknown as Logging).said.some(
      ({ from }) => from?.kind === 'report' && from.report.state === 'working',
    ),
  );
  await goTo(page, 'studies/map');
  await settled(page, 'map');
  const cancel = await page.evaluate(() => {
    const { said } = window as unknown as Logging;
    const dropped = said.findIndex(({ to }) => to?.kind === 'drop');
    const after = said.slice(dropped + 1);
    const asked = after.find(({ to }) => to?.kind === 'ask');
    const id = asked?.to?.kind === 'ask' ? asked.to.id : -1;
    const next = after.find(({ from }) => from?.kind === 'report' && from.id === id);
    return asked === undefined || next === undefined ? Number.NaN : Math.round(next.at - asked.at);
  });
  await page.close();
  return { first_answer_ms: { unproved, proved }, cancel_ms: cancel };
}
