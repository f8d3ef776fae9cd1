import { worstFirst } from '../../calc/limits/worst-first.ts';
import { cellNamed, resultNamed } from '../../plan/book.ts';
import type { Plan } from '../../plan/plan.ts';
import { standIns } from '../../plan/stand-ins.ts';
import { formatValue } from '../../units/format-value.ts';
import type { Judgement, LimitAnswer } from '../../workbook/judged.ts';

const TOLD = ['outside', 'no answer', 'near'];

function line({ result, value, verdict, why }: LimitAnswer, plan: Plan): string {
  const cell = cellNamed(result) ?? plan.ownCells.find((it) => it.name === result);
  const shown =
    value === undefined || !cell
      ? (why ?? '')
      : resultNamed(result)?.flag === true
        ? ''
        : formatValue(value, cell.unit, { unit: plan.units });
  return `${cell?.label ?? result}: ${verdict.state}${shown === '' ? '' : `, ${shown}`}`;
}

/** What a message says of a plan: on how much it rests, then the limits outside, without an answer and near. */
export function mailLines(plan: Plan, judgement: Judgement): readonly string[] {
  const told = worstFirst(judgement.limits).filter((it) => TOLD.includes(it.verdict.state));
  const counts = TOLD.map((state) => `${told.filter((it) => it.verdict.state === state).length} ${state}`);
  return [
    `Limits: ${counts.join(', ')}.`,
    `It rests on ${standIns(plan).length} stand-ins.`,
    ...told.map((it) => line(it, plan)),
  ];
}
