import { type Plan, readingOf } from '../../plan/plan.ts';
import { sourcesOf } from '../../plan/sources.ts';
import { listed } from '../../studies/words.ts';
import { studyWords } from '../study-words.ts';
import { variedInputs } from './varied-inputs.ts';

/** Inputs that follow other cells, in a scenario of a plan. */
export const following = (plan: Plan, scenario: string | null): readonly string[] =>
  [...plan.inputs.keys()].filter((name) => readingOf(plan, name, scenario)?.formula !== undefined);

/** Inputs with a ± of their own that follow only what has none, so that no study sees them off. */
function exact(plan: Plan, scenario: string | null): readonly string[] {
  const moved = new Set(
    variedInputs(plan, scenario)
      .filter((it) => it.offBy > 0)
      .map((it) => it.name.replace(/\[.*$/, '')),
  );
  return following(plan, scenario).filter(
    (name) =>
      (readingOf(plan, name, scenario)?.offBy ?? 0) > 0 &&
      [...sourcesOf(plan, name, scenario)].every((source) => !moved.has(source)),
  );
}

/** What no study of how far readings may be off looks at, as one sentence. */
export function leftOutSentence(plan: Plan, scenario: string | null, says = 'Left out'): string {
  const words = studyWords(plan);
  const out = [
    'a misread figure',
    'a wrong manual',
    'a face or rudder edge of another shape than it is taken for',
  ];
  if (plan.ownCells.length > 0) out.push('how far your own cells may be off');
  const still = exact(plan, scenario).map((name) => words.cell(name).short);
  if (still.length > 0) {
    const named = still.length > 3 ? [...still.slice(0, 3), `${still.length - 3} more`] : still;
    out.push(`the ± of ${listed(named)}, where what is followed has none`);
  }
  return `${says}: ${listed(out)}.`;
}
