import { benchOf } from '../../session/studies/bench-of.ts';
import { ReplayEvaluators } from '../../session/studies/evaluators.ts';
import { type StudyCall, type StudyName, start } from '../../session/studies/registry.ts';
import { finish } from '../../studies/study.ts';
import { Workbook } from '../../workbook/workbook.ts';
import { readArguments } from '../arguments.ts';
import { type Command, Refused } from '../exit.ts';
import { loadPlan } from '../load-plan.ts';
import { drivers } from '../study/drivers.ts';
import { Given } from '../study/given.ts';
import type { Kind } from '../study/kind.ts';
import { map } from '../study/map.ts';
import { odds } from '../study/odds.ts';
import { plain } from '../study/plain.ts';
import { proposals } from '../study/proposals.ts';
import { sweep } from '../study/sweep.ts';
import { turning } from '../study/turning.ts';

const KINDS = [sweep, map, drivers, turning, odds, proposals] as const;

/** The same for every study. */
const COMMON = ['plan', 'scenario'];

const CAUTION =
  'These are estimates. The gear maker’s manual comes first; let a rigger, yard or surveyor look before you drill.';

function answer<N extends StudyName>(kind: Kind<N>, given: Given, asJson: boolean): string {
  const { plan, scenario, workbook } = given;
  const ask = kind.ask(given);
  const bench = benchOf(workbook, new ReplayEvaluators(workbook), plan);
  const call: StudyCall<N> = { study: kind.study, ask };
  const found = finish(start(bench, call));
  workbook.show(plan, scenario);
  const says = kind.says(found, given, ask);
  if (asJson) return JSON.stringify({ study: kind.study, scenario, says, ask, answer: found }, plain);
  return [`${plan.title}, ${scenario ?? 'base values'}`, '', ...says, '', CAUTION].join('\n');
}

/** One study of a plan. */
export const study: Command = async ({ args, output }) => {
  const [name = '', ...rest] = args;
  const kind = KINDS.find((it) => it.study === name);
  if (kind === undefined) {
    const all = KINDS.map((it) => it.study);
    const what = name === '' ? 'The name of a study is missing' : `There is no study “${name}”`;
    throw new Refused(`${what}; there are ${all.slice(0, -1).join(', ')} and ${all.at(-1)}.`);
  }
  const given = readArguments(rest, [...COMMON, ...kind.options], ['json']);
  if ('why' in given) throw new Refused(given.why);
  const loaded = loadPlan(given.options.get('plan')?.at(-1), given.options.get('scenario')?.at(-1));
  if (!loaded.ok) throw new Refused(loaded.why);
  const { plan, scenario } = loaded;
  const asked = new Given(plan, scenario, new Workbook(plan, scenario), given.options);
  output.write(`${answer(kind as Kind<StudyName>, asked, given.flags.has('json'))}\n`);
};
