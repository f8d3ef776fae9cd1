import { type LengthOff, lengthsOff, type Off } from '../../fitting/strut-off.ts';
import { type FootSide, feetInUse } from '../../order/feet.ts';
import { inputNamed } from '../../plan/book.ts';
import { type Plan, type Reading, readingOf } from '../../plan/plan.ts';
import type { Answer, Content } from '../../workbook/engine.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import type { Workbook } from '../../workbook/workbook.ts';
import { restsOn } from '../standing.ts';

/** A workbook that may be moved about. */
export type FittedBench = Pick<Workbook, 'show' | 'answer' | 'judgement' | 'names' | 'uses'>;

export interface StrutCut {
  readonly side: FootSide;
  /** Undefined when there is no answer. */
  readonly length: LengthOff | undefined;
  readonly why: string | undefined;
  readonly planned: number | undefined;
}

/** What the plan comes to with the day's readings in the place of planned values. */
export interface AsFitted {
  readonly answers: ReadonlyMap<string, Answer>;
  readonly limits: readonly LimitAnswer[];
  readonly cuts: readonly StrutCut[];
}

/** The reading of an input as fitted, else as planned. */
export const fittedReading = (plan: Plan, name: string): Reading | undefined =>
  plan.fit.fitted.get(name) ?? readingOf(plan, name);

const fittedContents = (plan: Plan): Map<string, Content> =>
  new Map([...plan.fit.fitted].map(([name, { value }]) => [name, value]));

/** Numbers among some names that were read or chosen, with how far each may be off. */
const offsOf = (plan: Plan, names: Iterable<string>): Off[] =>
  [...names].flatMap((name): Off[] => {
    const cell = inputNamed(name);
    const reading = fittedReading(plan, name);
    if (cell?.type !== 'number' || typeof reading?.value !== 'number') return [];
    if (reading.formula !== undefined) return [];
    return [
      {
        name,
        value: reading.value,
        offBy: reading.offBy ?? cell.off_by,
        normal: reading.normal === true,
      },
    ];
  });

function cutsOf(bench: FittedBench, plan: Plan, contents: ReadonlyMap<string, Content>): StrutCut[] {
  const sides = feetInUse((name) => bench.answer(name).value);
  const names = sides.map((side) => `${side}_strut_cut`);
  const numbers = (): (number | undefined)[] =>
    names.map((name) => {
      const { value } = bench.answer(name);
      return typeof value === 'number' ? value : undefined;
    });
  const whys = names.map((name) => bench.answer(name).why);
  const uses = bench.uses();
  const inputs = new Set(names.flatMap((name) => [...restsOn(name, uses)]));
  const lengths = lengthsOff(offsOf(plan, inputs), (over) => {
    bench.show(plan, plan.active, new Map<string, Content>([...contents, ...over]));
    return numbers();
  });
  bench.show(plan, plan.active);
  const planned = numbers();
  return sides.map((side, i) => ({
    side,
    length: lengths[i],
    why: whys[i],
    planned: planned[i],
  }));
}

/** Every limit as fitted, on a bench of its own, which is left showing the plan so. */
export function limitsAsFitted(bench: FittedBench, plan: Plan): readonly LimitAnswer[] {
  bench.show(plan, plan.active, fittedContents(plan));
  return bench.judgement().limits;
}

/** Works a plan out as fitted on a bench of its own, which is left showing the plan as planned. */
export function asFitted(bench: FittedBench, plan: Plan): AsFitted {
  const contents = fittedContents(plan);
  bench.show(plan, plan.active, contents);
  const answers = new Map(bench.names.map((name) => [name, bench.answer(name)]));
  const { limits } = bench.judgement();
  return { answers, limits, cuts: cutsOf(bench, plan, contents) };
}
