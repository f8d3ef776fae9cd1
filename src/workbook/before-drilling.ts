import { cannotBeBuilt, worstFirst } from '../calc/limits/worst-first.ts';
import { inputNamed, limitNamed } from '../plan/book.ts';
import type { InputName } from '../plan/names.ts';
import type { Plan, Units } from '../plan/plan.ts';
import { standIns } from '../plan/stand-ins.ts';
import type { Judgement, LimitAnswer } from './judged.ts';
import { limitSentence, limitTitle, roomWords, valueWords } from './limit-words.ts';

/** What whoever drills from a printed thing reads first. */
export interface BeforeDrilling {
  /** Why the plan cannot be built, a clause each as it stands behind a colon, the worst first; empty when it can be. */
  readonly unbuildable: readonly string[];
  /** The other limits that are outside, each with how far. */
  readonly outside: readonly string[];
  /** What the holes rest on and is a stand-in, as it is called on screen. */
  readonly standIns: readonly string[];
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function clause(limit: LimitAnswer, units: Units): string {
  const said = limitNamed(limit.name)?.unbuildable ?? limitSentence(limit, units).replace(/\.$/, '');
  const { value } = limit;
  const by = value === undefined ? '' : valueWords({ ...limit, value: Math.abs(value) }, units);
  return lower(said.replace('{value}', valueWords(limit, units)).replace('{by}', by));
}

/** `under`: the inputs that the holes rest on. */
export function beforeDrilling(
  judgement: Judgement,
  plan: Plan,
  scenario: string | null,
  units: Units,
  under: readonly InputName[],
): BeforeDrilling {
  const unbuildable = cannotBeBuilt(judgement.limits);
  const held = new Set(standIns(plan, scenario));
  return {
    unbuildable: unbuildable.map((it) => clause(it, units)),
    outside: worstFirst(judgement.limits)
      .filter((it) => it.verdict.state === 'outside' && !unbuildable.includes(it))
      .map((it) => `${lower(limitTitle(it))}, ${roomWords(it, units)}`),
    standIns: under.filter((name) => held.has(name)).map((name) => lower(inputNamed(name)?.short ?? name)),
  };
}
