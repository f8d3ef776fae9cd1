import type { Browser, Page } from 'playwright-core';
import type { FromWorker, ToWorker } from '../../src/session/studies/messages.ts';

/** What went between the page and its worker, and when, ms since 1970: `at` by the page, `sent` by the worker. */
interface Said {
  readonly at: number;
  readonly sent?: number;
  readonly to?: ToWorker;
  readonly from?: FromWorker;
}

/** How long something took, ms, until the worker had sent its answer and until the page heard of it. */
interface Took {
  readonly by_worker: number;
  readonly heard: number;
}

interface Logging {
  said: Said[];
}

/** Longest wait for a study's answer, ms. */
const PATIENCE = 60_000;

const STUDIES = ['map', 'odds', 'proposals'] as const;

/** Put before the worker's script: each message then tells when it was sent. */
const STAMP = `const post = self.postMessage.bind(self);
self.postMessage = (it) => post({ ...it, sent: performance.timeOrigin + performance.now() });
`;

/** Keeps what the page and its worker say to each other. */
const listening = (): void => {
  const log = window as unknown as Logging;
  log.said = [];
  const Plain = window.Worker;
  window.Worker = class extends Plain {
    constructor(...given: ConstructorParameters<typeof Worker>) {
      super(...given);
      this.addEventListener('message', ({ data }: MessageEvent<FromWorker & { sent: number }>) => {
        log.said.push({ at: performance.timeOrigin + performance.now(), sent: data.sent, from: data });
      });
    }
    override postMessage(message: ToWorker): void {
      log.said.push({ at: performance.timeOrigin + performance.now(), to: message });
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

/**
 * From a study's first question to the worker's first report of it, ms: to the first that holds an answer, in part or
 * whole, or to any sign that it was taken up.
 */
async function toFirstReport(page: Page, study: string, until: 'answer' | 'sign'): Promise<Took> {
  const took = await page.waitForFunction(
    ([name, wanted]) => {
      const { said } = window as unknown as Logging;
      const asked = said.find(({ to }) => to?.kind === 'ask' && to.call.study === name);
      const id = asked?.to?.kind === 'ask' ? asked.to.id : -1;
      const told = said.find(
        ({ from }) =>
          from?.kind === 'report' &&
          from.id === id &&
          (wanted === 'sign' ||
            from.report.state === 'answered' ||
            (from.report.state === 'working' && from.report.progress.soFar !== undefined)),
      );
      if (asked === undefined || told?.sent === undefined) return undefined;
      return { by_worker: Math.round(told.sent - asked.at), heard: Math.round(told.at - asked.at) };
    },
    [study, until] as const,
    { timeout: PATIENCE },
  );
  return (await took.jsonValue()) as Took;
}

/**
 * First answers of a warm worker, proofs kept and new, and how soon after one question was dropped in the midst of its work
 * it takes up the next, ms. The page hears of an answer when it has time.
 */
export async function workerTimes(browser: Browser, address: string): Promise<Record<string, unknown>> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.addInitScript(listening);
  await page.route(/study-worker/, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: `${STAMP}${await response.text()}` });
  });
  await page.goto(address);
  await page.waitForFunction(() =>
    (window as unknown as Logging).said.some(({ from }) => from?.kind === 'ready'),
  );
  const unproved: Record<string, Took> = {};
  const proved: Record<string, Took> = {};
  for (const study of STUDIES) {
    await goTo(page, `studies/${study}`);
    await settled(page, study);
    unproved[study] = await toFirstReport(page, study, 'answer');
  }
  // Another plan asks the same questions anew.
  await goTo(page, 'mount');
  await page.locator('[data-view="form"] [data-cell="shim_count"] button.stepper').last().click();
  for (const study of STUDIES) {
    await goTo(page, `studies/${study}`);
    await settled(page, study);
    proved[study] = await toFirstReport(page, study, 'answer');
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
  const cancel = await toFirstReport(page, 'map', 'sign');
  await page.close();
  return { first_answer_ms: { unproved, proved }, cancel_ms: cancel };
}
