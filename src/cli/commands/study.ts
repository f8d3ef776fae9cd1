import { benchOf } from '../../session/studies/bench-of.ts';
import { ReplayEvaluators } from '../../session/studies/evaluators.ts';
import { type StudyCall, type StudyName, start } from '../../session/studies/registry.ts';
import { finish } from '../../studies/study.ts';
import { Workbook } from '../../workbook/workbook.ts';
import { type Arguments, asksForHelp, readArguments } from '../arguments.ts';
import { answerEach } from '../each-plan.ts';
import { type Command, Refused } from '../exit.ts';
import { loadPlan } from '../load-plan.ts';
import { helpText, OPTIONS, type OptionName, PATTERN_HELP } from '../options.ts';
import { isPattern } from '../plan-files.ts';
import { drivers } from '../study/drivers.ts';
import { Given } from '../study/given.ts';
import type { Kind } from '../study/kind.ts';
import { map } from '../study/map.ts';
import { mount } from '../study/mount.ts';
import { odds } from '../study/odds.ts';
import { plain } from '../study/plain.ts';
import { proposals } from '../study/proposals.ts';
import { sweep } from '../study/sweep.ts';
import { turning } from '../study/turning.ts';

const KINDS = [sweep, map, drivers, turning, odds, proposals, mount] as const;

/** The same for every study. */
const COMMON: readonly OptionName[] = ['plan', 'scenario', 'json'];

const NAMES = KINDS.map((it) => it.study);

type Asked = Pick<Kind<StudyName>, 'study' | 'options'>;

const namesOf = ({ options }: Asked): readonly OptionName[] => [...options, ...COMMON];

function help(kind: Asked | undefined): string {
  if (kind !== undefined)
    return helpText(`One study of a plan.\n${PATTERN_HELP}`, `study -- ${kind.study}`, namesOf(kind));
  const taken = new Set<string>(KINDS.flatMap(namesOf));
  return helpText(
    `One study of a plan: ${NAMES.slice(0, -1).join(', ')} or ${NAMES.at(-1)}. Each takes some of these options.\n${PATTERN_HELP}`,
    'study -- STUDY',
    (Object.keys(OPTIONS) as OptionName[]).filter((name) => taken.has(name)),
  );
}

const CAUTION =
  'These are estimates. The gear maker’s manual comes first; let a rigger, yard or surveyor look before you drill.';

function found<N extends StudyName>(kind: Kind<N>, given: Given) {
  const { plan, scenario, workbook } = given;
  const ask = kind.ask(given);
  const bench = benchOf(workbook, new ReplayEvaluators(workbook), plan);
  const call: StudyCall<N> = { study: kind.study, ask };
  const answer = finish(start(bench, call));
  workbook.show(plan, scenario);
  return { study: kind.study, scenario, says: kind.says(answer, given, ask), ask, answer };
}

function givenFor(file: string | undefined, { options }: Arguments): Given {
  const loaded = loadPlan(file, options.get('scenario')?.at(-1));
  if (!loaded.ok) throw new Refused(loaded.why);
  const { plan, scenario } = loaded;
  return new Given(plan, scenario, new Workbook(plan, scenario), options);
}

/** One study of a plan, or of each plan that a pattern stands for. */
export const study: Command = async ({ args, output }) => {
  const [name = '', ...rest] = args;
  const kind = KINDS.find((it) => it.study === name) as Kind<StudyName> | undefined;
  if (asksForHelp(args)) {
    output.write(help(kind));
    return;
  }
  if (kind === undefined) {
    const what = name === '' ? 'The name of a study is missing' : `There is no study “${name}”`;
    throw new Refused(
      `${what}; there are ${NAMES.slice(0, -1).join(', ')} and ${NAMES.at(-1)} (and --help answers).`,
    );
  }
  const asked = readArguments(rest, namesOf(kind));
  if ('why' in asked) throw new Refused(asked.why);
  const file = asked.options.get('plan')?.at(-1);
  if (file !== undefined && isPattern(file)) {
    answerEach(
      file,
      output,
      (it) => JSON.parse(JSON.stringify(found(kind, givenFor(it, asked)), plain)) as object,
    );
    return;
  }
  const given = givenFor(file, asked);
  const it = found(kind, given);
  const { plan, scenario } = given;
  output.write(
    asked.flags.has('json')
      ? `${JSON.stringify(it, plain)}\n`
      : `${[`${plan.title}, ${scenario ?? 'base values'}`, '', ...it.says, '', CAUTION].join('\n')}\n`,
  );
};
