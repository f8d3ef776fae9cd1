import type { Plan } from '../../plan/plan.ts';
import { Workbook } from '../../workbook/workbook.ts';
import { type Pace, StudyDesk } from '../study-desk.ts';
import { type FromWorker, type Line, PLANS_KEPT, type ToWorker } from './messages.ts';
import { keyOf, start } from './registry.ts';

/** A desk behind a line: the worker's side. It opens its workbook with the first plan it hears of. */
export function work(line: Line<FromWorker, ToWorker>, pace: Pace): void {
  const plans = new Map<number, Plan>();
  const asked = new Map<number, () => void>();
  let desk: StudyDesk | undefined;
  line.hear((message) => {
    switch (message.kind) {
      case 'plan': {
        const { content } = message;
        plans.set(message.plan, content);
        for (const old of [...plans.keys()].slice(0, -PLANS_KEPT)) plans.delete(old);
        if (desk === undefined) {
          desk = new StudyDesk(() => new Workbook(content), pace);
          desk.warm();
          line.send({ kind: 'ready' });
        }
        return;
      }
      case 'ask': {
        const { id, call } = message;
        const plan = plans.get(message.plan);
        if (plan === undefined || desk === undefined) {
          const why = 'The plan was not there when the study began.';
          line.send({ kind: 'report', id, report: { state: 'failed', why } });
          return;
        }
        const study = desk.ask(plan, {
          key: keyOf(call),
          urgent: call.urgent ?? false,
          make: (bench) => start(bench, call),
        });
        const tell = (): void => line.send({ kind: 'report', id, report: study.report() });
        asked.set(id, study.subscribe(tell));
        if (study.report().state !== 'waiting') tell();
        return;
      }
      case 'drop':
        asked.get(message.id)?.();
        asked.delete(message.id);
    }
  });
}
