import type { Plan } from '../../plan/plan.ts';
import { evaluation } from '../../workbook/evaluation.ts';
import { readOverrides } from '../../workbook/overrides.ts';
import { Workbook } from '../../workbook/workbook.ts';
import { type Arguments, asksForHelp, readArguments } from '../arguments.ts';
import { runBatch } from '../batch.ts';
import { answerEach } from '../each-plan.ts';
import { type Command, Refused } from '../exit.ts';
import { loadPlan } from '../load-plan.ts';
import { helpText, type OptionName, PATTERN_HELP } from '../options.ts';
import { isPattern } from '../plan-files.ts';
import { setOf } from '../set-of.ts';
import { tableFor } from '../table.ts';

const OPTIONS: readonly OptionName[] = ['plan', 'scenario', 'set', 'json', 'batch'];

const HELP = helpText(`Works out every result and limit of a plan.\n${PATTERN_HELP}`, 'evaluate --', OPTIONS);

const last = ({ options }: Arguments, name: string): string | undefined => options.get(name)?.at(-1);

function opened(file: string | undefined, given: Arguments): { plan: Plan; scenario: string | null } {
  const loaded = loadPlan(file, last(given, 'scenario'));
  if (!loaded.ok) throw new Refused(loaded.why);
  return loaded;
}

/** A plan in its scenario, with what is set put over it. */
function worked(file: string | undefined, given: Arguments) {
  const { plan, scenario } = opened(file, given);
  const overrides = readOverrides((given.options.get('set') ?? []).map(setOf), plan, scenario);
  if (!overrides.ok) throw new Refused(overrides.why);
  const workbook = new Workbook(plan, scenario);
  workbook.show(plan, scenario, overrides.contents);
  return { plan, scenario, workbook, contents: overrides.contents };
}

function answerOne(file: string, given: Arguments): object {
  const { plan, workbook } = worked(file, given);
  const answer = evaluation(workbook, plan);
  workbook.destroy();
  return answer;
}

/** One evaluation of a plan, of each plan that a pattern stands for, or for each line of a batch. */
export const evaluate: Command = async ({ args, input, output }) => {
  if (asksForHelp(args)) {
    output.write(HELP);
    return;
  }
  const given = readArguments(args, OPTIONS);
  if ('why' in given) throw new Refused(given.why);
  const file = last(given, 'plan');
  const isBatch = given.flags.has('batch');
  if (file !== undefined && isPattern(file)) {
    if (isBatch) throw new Refused('--batch takes one plan, not a pattern of plans.');
    answerEach(file, output, (it) => answerOne(it, given));
    return;
  }
  if (isBatch) {
    if (given.options.has('set'))
      throw new Refused('--batch takes its overrides line by line, not from --set.');
    const { plan, scenario } = opened(file, given);
    await runBatch(input, output, new Workbook(plan, scenario), plan, scenario);
    return;
  }
  const { plan, scenario, workbook, contents } = worked(file, given);
  output.write(
    given.flags.has('json')
      ? `${JSON.stringify(evaluation(workbook, plan))}\n`
      : `${tableFor(workbook, plan, scenario, contents)}\n`,
  );
};
