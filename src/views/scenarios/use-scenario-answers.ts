import { useEffect, useState, useSyncExternalStore } from 'react';
import { type ByScenario, type Later, ScenarioAnswers } from '../../session/scenario-answers.ts';
import { usePlan, useReady } from '../use-session.ts';

/** Longest that a scenario waits for the page to be idle, ms. */
const PATIENCE = 300;

const whenIdle: Later = (work) => {
  if (typeof requestIdleCallback === 'function') {
    const id = requestIdleCallback(work, { timeout: PATIENCE });
    return () => cancelIdleCallback(id);
  }
  const id = setTimeout(work, 30);
  return () => clearTimeout(id);
};

const NONE: ByScenario = new Map();
const silent = (): (() => void) => () => undefined;

export interface ScenarioAnswersShown {
  readonly answers: ByScenario;
  readonly waiting: number;
  /** Why nothing can be worked out. */
  readonly why: string | undefined;
}

/** What every scenario of the open plan comes to, while the view that asks is shown. */
export function useScenarioAnswers(): ScenarioAnswersShown {
  const plan = usePlan();
  const ready = useReady();
  const [store, setStore] = useState<ScenarioAnswers>();
  const [why, setWhy] = useState<string>();

  useEffect(() => {
    if (!ready) return;
    let made: ScenarioAnswers | undefined;
    let left = false;
    import('../../workbook/workbook.ts').then(
      ({ Workbook }) => {
        if (left) return;
        made = new ScenarioAnswers((it, scenario) => new Workbook(it, scenario), whenIdle);
        setStore(made);
      },
      () =>
        setWhy('The engine that works the scenarios out could not be loaded. Reload the page to try again.'),
    );
    return () => {
      left = true;
      made?.stop();
      setStore(undefined);
    };
  }, [ready]);

  useEffect(() => store?.show(plan), [store, plan]);

  const answers = useSyncExternalStore(store?.subscribe ?? silent, () => store?.answers ?? NONE);
  const waiting = useSyncExternalStore(store?.subscribe ?? silent, () => store?.waiting ?? 0);
  return { answers, waiting, why };
}
