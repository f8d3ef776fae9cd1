import { evaluation } from '../../workbook/evaluation.ts';
import { readOverrides } from '../../workbook/overrides.ts';
import { Workbook } from '../../workbook/workbook.ts';
import { readArguments } from '../arguments.ts';
import { runBatch } from '../batch.ts';
import { type Command, Refused } from '../exit.ts';
import { loadPlan } from '../load-plan.ts';
import { setOf } from '../set-of.ts';
import { tableFor } from '../table.ts';

/** One evaluation of a plan, or one for each line of a batch. */
export const evaluate: Command = async ({ args, input, output }) => {
  const given = readArguments(args, ['plan', 'scenario', 'set'], ['json', 'batch']);
  if ('why' in given) throw new Refused(given.why);
  const last = (name: string): string | undefined => given.options.get(name)?.at(-1);
  const loaded = loadPlan(last('plan'), last('scenario'));
  if (!loaded.ok) throw new Refused(loaded.why);
  const { plan, scenario } = loaded;
  const overrides = readOverrides((given.options.get('set') ?? []).map(setOf), plan, scenario);
  if (!overrides.ok) throw new Refused(overrides.why);
  if (given.flags.has('batch')) {
    if (overrides.contents.size > 0)
      throw new Refused('--batch takes its overrides line by line, not from --set.');
    await runBatch(input, output, new Workbook(plan, scenario), plan, scenario);
    return;
  }
  const workbook = new Workbook(plan, scenario);
  workbook.show(plan, scenario, overrides.contents);
  output.write(
    given.flags.has('json')
      ? `${JSON.stringify(evaluation(workbook, plan))}\n`
      : `${tableFor(workbook, plan, scenario, overrides.contents)}\n`,
  );
};
