import { openPlan } from '../../src/plan/file/open-plan.ts';
import { studyTimes } from './studies.ts';
import { sureness } from './sureness.ts';

/** Measures the studies of the plan file whose text it is sent, in a worker as the page has one. */
self.onmessage = ({ data }: MessageEvent<string>): void => {
  const opened = openPlan(data);
  if (!opened.ok) throw new Error(opened.why);
  self.postMessage({ ...sureness(opened.plan), ...studyTimes(opened.plan) });
};
