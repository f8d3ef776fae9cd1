import { evaluation } from '../workbook/evaluation.ts';
import { readOverrides } from '../workbook/overrides.ts';
import { Workbook } from '../workbook/workbook.ts';
import { readArguments } from './arguments.ts';
import { runBatch } from './batch.ts';
import { Refused, run } from './exit.ts';
import { loadPlan } from './load-plan.ts';
import { setOf } from './set-of.ts';
import { tableFor } from './table.ts';

await run(async () => {
  const given = readArguments(process.argv.slice(2), ['plan', 'scenario', 'set'], ['json', 'batch']);
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
    await runBatch(process.stdin, process.stdout, new Workbook(plan, scenario), plan, scenario);
    return;
  }
  const workbook = new Workbook(plan, scenario);
  workbook.show(plan, scenario, overrides.contents);
  process.stdout.write(
    given.flags.has('json')
      ? `${JSON.stringify(evaluation(workbook, plan))}\n`
      : `${tableFor(workbook, plan, scenario, overrides.contents)}\n`,
  );
});
