import { worstFirst } from '../calc/limits/worst-first.ts';
import { cellNamed, pages } from '../plan/book.ts';
import { CAUTION } from '../plan/caution.ts';
import type { Plan, Units } from '../plan/plan.ts';
import { formatValue } from '../units/format-value.ts';
import type { Content } from '../workbook/engine.ts';
import type { LimitAnswer } from '../workbook/judged.ts';
import { roomWords } from '../workbook/limit-words.ts';
import type { Workbook } from '../workbook/workbook.ts';

const unitOf = (name: string, plan: Plan): string =>
  cellNamed(name)?.unit ?? plan.ownCells.find((cell) => cell.name === name)?.unit ?? '–';

/** Columns padded to the widest entry of each, two spaces between. */
function columns(rows: readonly (readonly string[])[]): string {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((text, i) => {
      widths[i] = Math.max(widths[i] ?? 0, text.length);
    });
  return rows
    .map((row) =>
      row
        .map((text, i) => (i === row.length - 1 ? text : text.padEnd(widths[i] ?? 0)))
        .join('  ')
        .trimEnd(),
    )
    .map((line) => `  ${line}`)
    .join('\n');
}

function boundsText(limit: LimitAnswer, unit: string, units: Units): string {
  const show = (value: number): string => formatValue(value, unit, { unit: units });
  if (!limit.graded) return '';
  const low = limit.low === undefined ? undefined : `at least ${show(limit.low)}`;
  const high = limit.high === undefined ? undefined : `at most ${show(limit.high)}`;
  return [low, high].filter((it) => it !== undefined).join(', ');
}

function limitRows(workbook: Workbook, plan: Plan): string[][] {
  return worstFirst(workbook.judgement().limits).map((it) => {
    const unit = unitOf(it.result, plan);
    const { state, room } = it.verdict;
    const shownRoom = room === undefined ? (it.why ?? '') : roomWords(it, plan.units);
    const value =
      it.graded && it.value !== undefined ? formatValue(it.value, unit, { unit: plan.units }) : '';
    return [it.name, state, value, shownRoom, boundsText(it, unit, plan.units)];
  });
}

/** An evaluation for people: what was changed, limits with the worst first, results by page. */
export function tableFor(
  workbook: Workbook,
  plan: Plan,
  scenario: string | null,
  overrides: ReadonlyMap<string, Content>,
): string {
  const show = (name: string): string => {
    const { value, why } = workbook.answer(name);
    return value === null
      ? `no answer: ${why ?? ''}`
      : formatValue(value, unitOf(name, plan), { unit: plan.units });
  };
  const blocks = [`${plan.title}, ${scenario ?? 'base values'}`];
  if (overrides.size > 0)
    blocks.push(`Changed\n${columns([...overrides.keys()].map((name) => [name, show(name)]))}`);
  blocks.push(`Limits\n${columns(limitRows(workbook, plan))}`);
  const isMeasured = plan.tables.some((table) => table.rows.length > 0);
  for (const page of pages) {
    // Without a row in any table the survey has nothing to say.
    if (page.page === 'Survey' && !isMeasured) continue;
    const rows = page.sections.flatMap((section) =>
      section.cells
        .filter((cell) => cell.kind === 'result')
        .map((cell) => [cell.name, show(cell.name), cell.label]),
    );
    if (rows.length > 0) blocks.push(`${page.page}\n${columns(rows)}`);
  }
  if (plan.ownCells.length > 0) {
    blocks.push(
      `Own cells\n${columns(plan.ownCells.map((cell) => [cell.name, show(cell.name), cell.label]))}`,
    );
  }
  blocks.push(CAUTION);
  return blocks.join('\n\n');
}
