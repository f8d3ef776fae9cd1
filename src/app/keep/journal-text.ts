import { openPlan } from '../../plan/file/open-plan.ts';
import { writePlan } from '../../plan/file/write-plan.ts';
import type { Plan, StudySettings } from '../../plan/plan.ts';
import type { Journal, Step } from '../../session/journal.ts';
import { inverse, type Splice, spliced, spliceOf } from './splice.ts';

/** Steps stored to each side of the plan; the window itself remembers more. */
export const MOST_STEPS = 200;

/** A step as stored: what leads one step further away from the plan that is stored beside it. */
interface Line extends Splice {
  readonly label: string;
  readonly opens?: true;
  /** What the plan further away was asked, where another plan took its place. */
  readonly studies?: readonly StudySettings[];
}

/** How the steps are written: since 2 without what a plan's studies are set to, which is no step. */
const VERSION = 2;

const NO_STUDIES: readonly StudySettings[] = [];

/** The text that steps lead to and from. */
const textOf = (plan: Plan): string => writePlan({ ...plan, studies: NO_STUDIES });

const known = new WeakMap<Step, { readonly back: Splice; readonly forth: Splice }>();

/** A step's splices in both directions; a step is written out once, however often the plan is saved. */
function splicesOf(step: Step): { readonly back: Splice; readonly forth: Splice } {
  const found = known.get(step);
  if (found !== undefined) return found;
  const [before, after] = [textOf(step.before), textOf(step.after)];
  const forth = spliceOf(before, after);
  const made = { back: inverse(before, forth), forth };
  known.set(step, made);
  return made;
}

const lineOf =
  (way: 'back' | 'forth') =>
  (step: Step): Line => ({
    label: step.label,
    ...(step.opens === true
      ? { opens: true as const, studies: (way === 'back' ? step.before : step.after).studies }
      : {}),
    ...splicesOf(step)[way],
  });

/** A journal as text, nearest step last. It is read against the text of the plan as it stands. */
export const writeJournal = ({ done, undone }: Journal): string =>
  JSON.stringify({
    version: VERSION,
    done: done.slice(-MOST_STEPS).map(lineOf('back')),
    undone: undone.slice(-MOST_STEPS).map(lineOf('forth')),
  });

/** A plan that is read when it is wanted. */
class Later {
  readonly text: string;
  readonly #studies: readonly StudySettings[];
  #plan: Plan | undefined;

  constructor(text: string, studies: readonly StudySettings[], plan?: Plan) {
    this.text = text;
    this.#studies = studies;
    this.#plan = plan;
  }

  get plan(): Plan {
    if (this.#plan !== undefined) return this.#plan;
    const opened = openPlan(this.text);
    if (!opened.ok) throw new Error(`A kept step cannot be read: ${opened.why}`);
    this.#plan = { ...opened.plan, studies: this.#studies };
    return this.#plan;
  }
}

/** Steps from the stored lines, nearest last, each line leading one step further from the plan. */
function stepsFrom(lines: readonly Line[], here: Later, way: 'back' | 'forth'): Step[] {
  const steps: Step[] = [];
  let near = here;
  for (const line of lines.toReversed()) {
    const [from, far] = [near, new Later(spliced(near.text, line), line.studies ?? NO_STUDIES)];
    const [before, after] = way === 'back' ? [far, from] : [from, far];
    const step: Step = {
      label: line.label,
      opens: line.opens,
      get before() {
        return before.plan;
      },
      get after() {
        return after.plan;
      },
    };
    const { at, drop, put } = line;
    const [away, home] = [{ at, drop, put }, inverse(near.text, line)];
    known.set(step, way === 'back' ? { back: away, forth: home } : { back: home, forth: away });
    steps.unshift(step);
    near = far;
  }
  return steps;
}

/**
 * The journal that was stored beside a plan's text. A plan of the journal is opened only when undo comes to it. None
 * when this version writes plan or steps differently: the steps lead from the text as it was stored.
 */
export function readJournal(journal: string, text: string, plan: Plan): Journal | undefined {
  if (writePlan(plan) !== text) return undefined;
  const { version, done, undone } = JSON.parse(journal) as {
    version?: number;
    done: Line[];
    undone: Line[];
  };
  if (version !== VERSION) return undefined;
  const here = new Later(textOf(plan), plan.studies, plan);
  return { done: stepsFrom(done, here, 'back'), undone: stepsFrom(undone, here, 'forth') };
}
